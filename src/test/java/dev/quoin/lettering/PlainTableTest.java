package dev.quoin.lettering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Given the table of a font, then it tells of plain text what the font itself tells, without opening it. */
class PlainTableTest {
    private static final String FOLDER = "/dev/quoin/lettering/fonts/";

    /** One font with many kerned pairs and joined letters, one of a fixed width. */
    @ParameterizedTest
    @ValueSource(strings = {FOLDER + "DancingScript-Bold.ttf", "/net/sf/jasperreports/fonts/dejavu/DejaVuSansMono.ttf"})
    void everyLetterAndPairIsAsTheFontHasIt(String resource) {
        OutlineTypeface font = new OutlineTypeface(() -> BundledFonts.open(resource));
        PlainFont asked = font.shaped().orElseThrow();
        PlainTable table = new PlainTable(PlainTables.write(font));

        assertEquals(font.capHeight(), table.capHeight());
        assertEquals(asked.unit(), table.unit());
        int letters = 0;
        for (int first = 0; first < PlainLatin.COUNT; first++) {
            if (PlainTable.place(first) < 0) {
                continue;
            }
            assertEquals(asked.has(first), table.has(first));
            if (asked.has(first)) {
                letters++;
                assertEquals(asked.drawn(first), table.drawn(first));
                assertSameSteps(first, asked, table);
            }
        }
        assertTrue(letters > 250, letters + " letters");
    }

    private static void assertSameSteps(int first, PlainFont asked, PlainTable table) {
        for (PlainScript script : PlainScript.values()) {
            assertEquals(asked.after(first, script), table.after(first, script));
            for (int second = 0; second < PlainLatin.COUNT; second++) {
                if (PlainTable.place(second) >= 0 && asked.has(second)) {
                    assertEquals(asked.between(first, second, script), table.between(first, second, script));
                }
            }
        }
    }

    @Test
    void textWithATableIsSetAsWithoutOneAndTheFontIsNotOpened() {
        OutlineTypeface font = new OutlineTypeface(() -> BundledFonts.open(FOLDER + "Barlow-Regular.ttf"));
        PlainTable table = new PlainTable(PlainTables.write(font));
        OutlineTypeface closed = new OutlineTypeface(
                () -> {
                    throw new IOException("opened");
                },
                () -> Optional.of(table));
        int plain = 0;
        for (String name : Names.all()) {
            if (PlainTable.covers(name)) {
                assertEquals(font.setPlain(name), closed.setPlain(name), name);
                plain += closed.setPlain(name).isPresent() ? 1 : 0;
            }
        }
        assertTrue(plain > 100, plain + " names");
        assertTrue(closed.isUsed());
        assertEquals(font.capHeight(), closed.capHeight());
    }

    /** What no plain text has is covered too, since the table says so. */
    @ParameterizedTest
    @CsvSource({
        "Zoë O’Hara-Łukasz, true",
        "ſ, true",
        "ƀ, false",
        "Țepeș, false",
        "'', true",
        "Ελένη, true",
    })
    void itCoversTheLettersOfMostLanguagesOfEurope(String text, boolean covered) {
        assertEquals(covered, PlainTable.covers(text));
    }

    @Test
    void noTwoFontsShareATable() throws IOException {
        assertEquals(
                BundledFonts.resources().stream()
                        .map(BundledFonts::tableOf)
                        .distinct()
                        .count(),
                BundledFonts.resources().size());
    }
}
