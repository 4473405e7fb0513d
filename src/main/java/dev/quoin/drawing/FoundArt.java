package dev.quoin.drawing;

/**
 * A drawing that was found. Its bytes are not copied: whoever makes one hands its array over.
 *
 * @param name what messages call the file
 * @param content its bytes
 */
@SuppressWarnings("ArrayRecordComponent") // Identity is enough; nobody compares files.
public record FoundArt(String name, byte[] content) implements ArtFile {}
