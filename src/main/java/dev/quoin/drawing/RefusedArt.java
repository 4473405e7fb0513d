package dev.quoin.drawing;

/**
 * Why a drawing cannot be shown.
 *
 * @param message continues the name of the element that shows it
 * @param remedy what to do about it
 */
public record RefusedArt(String message, String remedy) implements ArtFile {}
