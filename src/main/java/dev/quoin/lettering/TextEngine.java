package dev.quoin.lettering;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Java's text engine needs two libraries of the system, which a bare Linux lacks. */
public final class TextEngine {
    private static final String MISSING =
            "Java's text engine does not start here, for it needs fontconfig and FreeType; install them, on Debian or Ubuntu "
                    + "with: apt-get install fontconfig libfreetype6";

    private TextEngine() {}

    /** What to say if a failure comes from that; the platform tells it in several ways. */
    public static Optional<String> missing(Throwable failure) {
        return Stream.iterate(failure, cause -> cause != null, Throwable::getCause)
                .limit(20)
                .filter(TextEngine::isTextEngine)
                .findFirst()
                .map(cause -> MISSING);
    }

    /** The same for a font that was read whole and did not open: the platform says no more than that. */
    static IOException ofFont(String font, IOException e) {
        return "Problem reading font data.".equals(e.getMessage()) ? new FileSystemException(font, null, MISSING) : e;
    }

    private static boolean isTextEngine(Throwable cause) {
        String text = cause.toString().toLowerCase(Locale.ROOT);
        boolean kind = cause instanceof LinkageError
                || cause instanceof InternalError
                || text.contains("fontconfig head is null");
        return kind
                && Stream.of("freetype", "fontmanager", "fontconfig", "sun.font", "sun.awt")
                        .anyMatch(text::contains);
    }
}
