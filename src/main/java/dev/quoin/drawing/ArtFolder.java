package dev.quoin.drawing;

/** Where the drawings that a drawing shows by {@code <image>} are found. */
@FunctionalInterface
public interface ArtFolder {
    /** Has no drawings. */
    ArtFolder NONE = reference ->
            new RefusedArt("shows another drawing, which is not read here", "copy that drawing into this one");

    /**
     * Finds a drawing.
     *
     * @param reference its {@code href}, such as {@code art/wolf.svg}
     */
    ArtFile find(String reference);
}
