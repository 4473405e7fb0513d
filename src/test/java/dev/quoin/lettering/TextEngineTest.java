package dev.quoin.lettering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.junit.jupiter.api.Test;

/** The ways in which Java 17 and 25 fail without FreeType or fontconfig, as seen on Debian, and failures like them. */
class TextEngineTest {
    private static final String SAID =
            "Java's text engine does not start here, for it needs fontconfig and FreeType; install them, on Debian or "
                    + "Ubuntu with: apt-get install fontconfig libfreetype6";

    @Test
    void aLibraryThatIsMissingIsNamedWithItsRemedy() {
        Error missing = new UnsatisfiedLinkError("/usr/lib/jvm/lib/libfontmanager.so: libfreetype.so.6: cannot open "
                + "shared object file: No such file or directory");
        assertEquals(SAID, TextEngine.missing(missing).orElseThrow());
        assertEquals(
                SAID,
                TextEngine.missing(new IOException("Problem reading font data.", missing))
                        .orElseThrow());
        assertEquals(
                SAID,
                TextEngine.missing(new NoClassDefFoundError("Could not initialize class sun.font.SunFontManager"))
                        .orElseThrow());
        assertEquals(
                SAID,
                TextEngine.missing(new RuntimeException(
                                "Fontconfig head is null, check your fonts or fonts configuration"))
                        .orElseThrow());
    }

    @Test
    void aFontThatWasReadAndDoesNotOpenIsThatToo() {
        IOException said = TextEngine.ofFont("Barlow-Bold.ttf", new IOException("Problem reading font data."));
        assertEquals("Barlow-Bold.ttf: " + SAID, said.getMessage());
        IOException full = new IOException("No space left on device");
        assertEquals(full, TextEngine.ofFont("Barlow-Bold.ttf", full));
    }

    @Test
    void otherFailuresAreNot() {
        assertTrue(TextEngine.missing(new IOException("Problem reading font data."))
                .isEmpty());
        assertTrue(TextEngine.missing(new NoClassDefFoundError("dev/quoin/job/Prepare"))
                .isEmpty());
    }
}
