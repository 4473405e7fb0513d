package dev.quoin.lettering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Path;
import dev.quoin.problem.Problems;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.awt.font.TextAttribute;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Given real names of 64 locales, then each is set whole, or what is missing is named. */
class NamesTest {
    private static final String NOTO = "/usr/share/fonts/truetype/noto";
    private static final String NOTO_CJK = "/usr/share/fonts/opentype/noto";

    /** Locales with names in scripts, or with a letter, that DejaVu Sans lacks, and how Unicode names these characters. */
    private static final Map<String, String> BEYOND = Map.of(
            "dv", "THAANA",
            "ja", "CJK|HIRAGANA|KATAKANA",
            "ko", "HANGUL",
            "ne", "DEVANAGARI",
            "th", "THAI",
            "ur", "ARABIC LETTER HEH GOAL",
            "zh_CN", "CJK",
            "zh_TW", "CJK");

    static Collection<String> covered() {
        Set<String> locales = new TreeSet<>(Names.BY_LOCALE.keySet());
        locales.removeAll(BEYOND.keySet());
        return locales;
    }

    static Collection<String> beyond() {
        return new TreeSet<>(BEYOND.keySet());
    }

    @Test
    void theDataHoldsSixtyFourLocales() {
        assertEquals(64, Names.BY_LOCALE.size());
        assertEquals(3161, Names.all().size());
    }

    @ParameterizedTest
    @MethodSource("covered")
    void namesInTheScriptsOfTheBundledFontAreSet(String locale) {
        assertAllSet(locale, Fonts.of("DejaVu Sans"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"cs_CZ", "de", "en", "es_MX", "fr", "hu", "pl", "pt_PT", "ro", "tr", "vi"})
    void latinNamesAreSetInStrokes(String locale) {
        assertAllSet(locale, Fonts.of("Stroke Sans"));
    }

    @ParameterizedTest
    @MethodSource("beyond")
    void namesInOtherScriptsAreReportedByCharacter(String locale) {
        String expected = "no glyph for U\\+[0-9A-F]+ .*(" + BEYOND.get(locale) + ").* in DejaVu Sans";
        int reported = 0;
        for (String name : Names.BY_LOCALE.get(locale)) {
            if (Fonts.TYPESETTER.set(name, Fonts.of("DejaVu Sans")) instanceof MissingCharacters missing) {
                assertTrue(missing.message().matches(expected), () -> name + ": " + missing.message());
                reported++;
            } else {
                assertTrue(name.codePoints().allMatch(c -> c < 0x250 || locale.equals("ur")), name);
            }
        }
        assertTrue(reported >= 10, locale + " has " + reported);
    }

    @ParameterizedTest
    @CsvSource({"dv,Noto Sans Thaana", "ne,Noto Sans Devanagari", "th,Noto Sans Thai", "ur,Noto Nastaliq Urdu"})
    void namesInOtherScriptsAreSetInNotoFonts(String locale, String family) throws IOException {
        assertAllSet(locale, Fonts.of(open(NOTO), family, "Noto Sans"));
    }

    @ParameterizedTest
    @CsvSource({"ja,Noto Sans CJK JP", "ko,Noto Sans CJK KR", "zh_CN,Noto Sans CJK SC", "zh_TW,Noto Sans CJK TC"})
    void eastAsianNamesAreSetInACollectionOfNotoFonts(String locale, String family) throws IOException {
        assertAllSet(locale, Fonts.of(open(NOTO_CJK), family));
    }

    /** Conjuncts and marks: the platform's own layout of the whole line, at another size: java.awt.font.GlyphVector. */
    @ParameterizedTest
    @CsvSource({"ne,NotoSansDevanagari-Regular.ttf,Noto Sans Devanagari", "th,NotoSansThai-Regular.ttf,Noto Sans Thai"})
    void conjunctsAndMarksAreThoseOfThePlatform(String locale, String file, String family)
            throws IOException, FontFormatException {
        FontSet fonts = Fonts.of(open(NOTO), family);
        Font font = Font.createFont(Font.TRUETYPE_FONT, new File(NOTO, file))
                .deriveFont(Map.of(
                        TextAttribute.SIZE, 4000f,
                        TextAttribute.KERNING, TextAttribute.KERNING_ON,
                        TextAttribute.LIGATURES, TextAttribute.LIGATURES_ON));
        List<String> texts = new ArrayList<>(Names.BY_LOCALE.get(locale));
        // Conjuncts, a reordered vowel, a repha; stacked tone marks and a mark on a tall letter.
        texts.addAll(
                locale.equals("ne")
                        ? List.of("क्षत्रिय", "ज्ञान", "कर्म", "विद्या")
                        : List.of("ที่นี่", "ปู่ป่า", "น้ำ"));
        int compared = 0;
        for (String text : texts) {
            if (Fonts.TYPESETTER.set(text, fonts) instanceof TypesetText set) {
                Path expected = Path.of(font.layoutGlyphVector(
                                        new FontRenderContext(null, true, true),
                                        text.toCharArray(),
                                        0,
                                        text.length(),
                                        Font.LAYOUT_LEFT_TO_RIGHT)
                                .getOutline())
                        .transform(Affine.scale(1 / 4000.0, -1 / 4000.0));
                assertEquals(0, Coverage.difference(expected, set.outline()), 2e-3, text);
                compared++;
            }
        }
        assertTrue(compared > 40, "compared " + compared);
    }

    private static void assertAllSet(String locale, FontSet fonts) {
        Set<String> lacking = new TreeSet<>();
        for (String name : Names.BY_LOCALE.get(locale)) {
            if (Fonts.TYPESETTER.set(name, fonts) instanceof MissingCharacters missing) {
                lacking.add(name + ": " + missing.message());
            }
        }
        assertEquals(Set.of(), lacking);
    }

    private static FontLibrary open(String folder) throws IOException {
        Assumptions.assumeTrue(Files.isDirectory(java.nio.file.Path.of(folder)), folder + " is not installed");
        return FontLibrary.open(List.of(java.nio.file.Path.of(folder)), false, new Problems());
    }
}
