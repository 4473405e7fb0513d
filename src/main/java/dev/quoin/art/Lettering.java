package dev.quoin.art;

import dev.quoin.drawing.Element;
import dev.quoin.geometry.Path;
import java.util.Optional;

/** How a text is laid out, in its own frame. */
sealed interface Lettering permits PlacedLettering, FittedLettering, PathLettering {
    /** The letters of a row, or nothing if it has a problem. */
    Optional<Lettered> set(Merging row, Element element);

    /** What a problem with the whole text is told of. */
    TextSource source();

    /** Whether the letters are open strokes, to be followed and not filled. */
    boolean strokes();

    /** Letters in the text's frame, and what they say. */
    record Lettered(Path outline, MarkedText text) {}
}
