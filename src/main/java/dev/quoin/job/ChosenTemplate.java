package dev.quoin.job;

import dev.quoin.art.Template;

/**
 * A template that is chosen for a side of a piece.
 *
 * @param name how files name it
 */
record ChosenTemplate(Template template, String name) {}
