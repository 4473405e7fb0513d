package dev.quoin.lettering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.problem.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Given real names (npm @faker-js/faker 10.6.0, MIT), then each is set whole, or what is missing is named. */
class NamesTest {
    private static final Path NOTO = Path.of("/usr/share/fonts/truetype/noto");

    @ParameterizedTest
    @ValueSource(strings = {"ar", "de", "en", "es_MX", "fr", "he", "tr", "vi"})
    void namesInTheScriptsOfTheBundledFontAreSet(String locale) throws IOException {
        FontSet fonts = Fonts.of("DejaVu Sans");
        Set<String> lacking = new TreeSet<>();
        for (String name : names(locale)) {
            if (Fonts.TYPESETTER.set(name, fonts) instanceof MissingCharacters missing) {
                lacking.add(name + ": " + missing.message());
            }
        }
        assertEquals(Set.of(), lacking);
    }

    @ParameterizedTest
    @ValueSource(strings = {"de", "en", "es_MX", "fr", "tr", "vi"})
    void latinNamesAreSetInStrokes(String locale) throws IOException {
        FontSet fonts = Fonts.of("Stroke Sans");
        for (String name : names(locale)) {
            Typeset set = Fonts.TYPESETTER.set(name, fonts);
            assertTrue(set instanceof TypesetText, () -> name + ": " + set);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"ja", "th"})
    void namesInOtherScriptsAreReportedByCharacter(String locale) throws IOException {
        String script = locale.equals("th") ? "THAI CHARACTER" : "CJK|HIRAGANA|KATAKANA";
        for (String name : names(locale)) {
            Typeset set = Fonts.TYPESETTER.set(name, Fonts.of("DejaVu Sans"));
            assertTrue(
                    set instanceof MissingCharacters missing
                            && missing.message()
                                    .matches("no glyph for U\\+[0-9A-F]+ .*(" + script + ").* in DejaVu Sans"),
                    () -> name + ": " + set);
        }
    }

    @Test
    void thaiNamesAreSetInNotoSansThaiWhereItIsInstalled() throws IOException {
        Assumptions.assumeTrue(
                Files.exists(NOTO.resolve("NotoSansThai-Regular.ttf")), "fonts-noto-core is not installed");
        FontLibrary library = FontLibrary.open(List.of(NOTO), false, new Problems());
        FontSet fonts = Fonts.of(library, "Noto Sans Thai", "DejaVu Sans");
        for (String name : names("th")) {
            Typeset set = Fonts.TYPESETTER.set(name, fonts);
            assertTrue(set instanceof TypesetText, () -> name + ": " + set);
        }
    }

    private static List<String> names(String locale) throws IOException {
        String cases = System.getProperty("quoin.cases", "");
        Path folder = Path.of(cases, "names");
        Assumptions.assumeTrue(!cases.isEmpty() && Files.isDirectory(folder), "quoin.cases is not set");
        List<String> names = new java.util.ArrayList<>(Files.readAllLines(folder.resolve(locale + ".first.txt")));
        names.addAll(Files.readAllLines(folder.resolve(locale + ".last.txt")));
        assertTrue(names.size() > 50);
        return names;
    }
}
