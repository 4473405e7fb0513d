package dev.quoin.lettering;

import dev.quoin.drawing.FontRequest;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;

/** Fonts and set text for tests, in few words. */
final class Fonts {
    static final FontLibrary BUNDLED = library();
    static final Typesetter TYPESETTER = new Typesetter();

    private Fonts() {}

    /** The regular faces of the bundled families. */
    static FontSet of(String... families) {
        return of(BUNDLED, families);
    }

    static FontSet of(FontLibrary library, String... families) {
        Problems problems = new Problems();
        return library.select(new FontRequest(List.of(families), 400, false), Place.of("test"), problems)
                .orElseThrow(() -> new AssertionError(problems.sorted()));
    }

    static TypesetText set(String text, String... families) {
        Typeset set = TYPESETTER.set(text, of(families));
        if (set instanceof MissingCharacters missing) {
            throw new AssertionError(missing.message());
        }
        return (TypesetText) set;
    }

    private static FontLibrary library() {
        try {
            return FontLibrary.open(List.<Path>of(), false, new Problems());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
