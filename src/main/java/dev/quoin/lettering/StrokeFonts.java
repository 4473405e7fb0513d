package dev.quoin.lettering;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;

/** The bundled fonts of single strokes, after A. V. Hershey's data. */
final class StrokeFonts {
    private StrokeFonts() {}

    static List<FontFace> faces() {
        return List.of(
                face("Stroke Sans", "futural.jhf", true),
                face("Stroke Serif", "timesr.jhf", false),
                face("Stroke Script", "cursive.jhf", false));
    }

    private static FontFace face(String family, String file, boolean plain) {
        return new FontFace(family, 400, false, new StrokeTypeface(() -> read(file, plain)), Optional.empty());
    }

    private static StrokeData read(String file, boolean plain) {
        try {
            return StrokeData.read(file, plain);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
