package dev.quoin.drawing;

import java.util.List;

/**
 * What an element is called in its file.
 *
 * @param id its {@code id}; empty where it has none
 * @param classes the words of its {@code class}, in order
 */
public record Names(String id, List<String> classes) {}
