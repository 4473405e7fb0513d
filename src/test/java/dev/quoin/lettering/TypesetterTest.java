package dev.quoin.lettering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.drawing.TextAnchor;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.font.TextAttribute;
import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Given a text, then these outlines, or these characters are missing. */
class TypesetterTest {
    /** The platform's own layout of the same text at another size, scaled: java.awt.font.GlyphVector.getOutline. */
    @ParameterizedTest
    @ValueSource(strings = {"AVATAR fi", "Zoë Łukasz Nuñez", "Ünïcödé", "To-day, 12.5%", "Ελένη", "Дмитрий"})
    void outlinesAreThoseOfThePlatformAtALargeSize(String text) throws Exception {
        Font font = Font.createFont(
                        Font.TRUETYPE_FONT,
                        new ByteArrayInputStream(
                                BundledFonts.read("/net/sf/jasperreports/fonts/dejavu/DejaVuSerif.ttf")))
                .deriveFont(Map.of(
                        TextAttribute.SIZE, 4096f,
                        TextAttribute.KERNING, TextAttribute.KERNING_ON,
                        TextAttribute.LIGATURES, TextAttribute.LIGATURES_ON));
        GlyphVector whole = font.layoutGlyphVector(
                new FontRenderContext(null, true, true), text.toCharArray(), 0, text.length(), 0);
        Path expected = Path.of(whole.getOutline()).transform(Affine.scale(1 / 4096.0, -1 / 4096.0));
        TypesetText set = Fonts.set(text, "DejaVu Serif");
        assertSameCoverage(expected, set.outline());
        assertEquals(whole.getLogicalBounds().getWidth() / 4096, set.advance(), 1e-3);
    }

    @Test
    void kerningAndLigaturesAreOn() {
        double apart = Fonts.set("A", "sans-serif").advance()
                + Fonts.set("V", "sans-serif").advance();
        assertTrue(Fonts.set("AV", "sans-serif").advance() < apart - 0.05);
        TypesetText ligature = Fonts.set("fi", "sans-serif");
        TypesetText letters = Fonts.set("f\u200Ci", "sans-serif");
        assertTrue(Coverage.difference(letters.outline(), ligature.outline()) > 0.01);
    }

    @Test
    void lengthsAreInEmsWithTheYAxisUp() {
        TypesetText set = Fonts.set("Hg", "sans-serif");
        // DejaVu Sans: cap height 1493 of 2048 units (its own documentation: 0.729).
        assertEquals(0.729, set.capHeight(), 5e-4);
        assertEquals(0.729, Fonts.set("H", "sans-serif").ink().maxY(), 5e-4);
        assertTrue(set.ink().minY() < -0.15, "the descender of g lies under the baseline");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Zoë", "Łukasz Nuñez", "Nguyễn Thị Hồng", "Žofie Ďáblíková", "Ångström", "각"})
    void bothSpellingsOfAnAccentGiveTheSameOutline(String composed) {
        String decomposed = java.text.Normalizer.normalize(composed, java.text.Normalizer.Form.NFD);
        FontSet fonts = Fonts.of("sans-serif");
        assertEquals(Fonts.TYPESETTER.set(composed, fonts), Fonts.TYPESETTER.set(decomposed, fonts));
    }

    @Test
    void arabicLettersJoin() {
        TypesetText joined = Fonts.set("محمد", "sans-serif");
        // U+200C ZERO WIDTH NON-JOINER keeps the letters apart.
        TypesetText isolated = Fonts.set("م\u200Cح\u200Cم\u200Cد", "sans-serif");
        double letters = Stream.of("م", "ح", "م", "د")
                .mapToDouble(letter -> Fonts.set(letter, "sans-serif").advance())
                .sum();
        assertEquals(letters, isolated.advance(), 1e-6);
        // In this font the joined forms are as wide as the isolated ones; their ink is not the same.
        assertTrue(Coverage.difference(joined.outline(), isolated.outline()) > 0.1);
    }

    @Test
    void arabicLettersJoinAcrossACombiningMarkAndKeepTheirOrder() {
        TypesetText word = Fonts.set("بن", "sans-serif");
        TypesetText noon = Fonts.set("ن", "sans-serif");
        Box leftHalf = new Box(0, -1, word.advance() / 2, 1);
        assertTrue(
                Coverage.inkArea(word.outline(), leftHalf)
                        > 0.5 * Coverage.inkArea(noon.outline(), new Box(-1, -1, 2, 1)),
                "the second letter stands at the left");
    }

    /** UAX #9: in "abc אבג def" the Hebrew word reads from right to left between the Latin ones. */
    @Test
    void aHebrewNameInsideALatinLineKeepsItsPlace() {
        FontSet fonts = Fonts.of("sans-serif");
        TypesetText line = Fonts.set("abc אבג def", "sans-serif");
        Path.Builder expected = Path.builder();
        double pen = 0;
        for (String part : List.of("abc ", "ג", "ב", "א", " def")) {
            TypesetText set = (TypesetText) Fonts.TYPESETTER.set(part, fonts);
            expected.append(set.outline().transform(Affine.translate(pen, 0)));
            pen += set.advance();
        }
        assertSameCoverage(expected.build(), line.outline());
    }

    /** UAX #9, rule P2: the first strong letter decides; HL1 lets a program choose so for each value. */
    @Test
    void theFirstLetterDecidesTheDirectionOfTheLine() {
        double comma = Fonts.set("שלום,", "sans-serif").ink().minX();
        double latin = Fonts.set("abc,", "sans-serif").ink().maxX();
        assertTrue(comma < Fonts.set("ש", "sans-serif").ink().minX() + 0.2);
        assertTrue(latin > Fonts.set("abc", "sans-serif").ink().maxX());
    }

    @Test
    void bracketsAreMirroredInRightToLeftText() {
        TypesetText line = Fonts.set("(אב)", "sans-serif");
        TypesetText open = Fonts.set("(", "sans-serif");
        double width = open.ink().maxX() + 0.02;
        assertEquals(
                Coverage.inkArea(open.outline(), new Box(-1, -1, 2, 2)),
                Coverage.inkArea(line.outline(), new Box(-1, -1, width, 2)),
                1e-3);
    }

    @Test
    void eachCharacterTakesTheFirstFontThatHasIt() {
        TypesetText mixed = Fonts.set("Zoë אב", "Barlow", "DejaVu Sans");
        double barlow = Fonts.set("Zoë ", "Barlow").advance();
        double dejavu = Fonts.set("אב", "DejaVu Sans").advance();
        assertEquals(barlow + dejavu, mixed.advance(), 1e-6);
        assertEquals(Fonts.of("Barlow").capHeight(), mixed.capHeight());
    }

    @ParameterizedTest
    @CsvSource({
        "三, U+4E09 CJK UNIFIED IDEOGRAPHS 4E09 \"三\"",
        "a\u0007b, U+0007 BEL",
        "\uD83E\uDD84, U+1F984 UNICORN FACE \"\uD83E\uDD84\"",
        "x\uE000, U+E000 PRIVATE USE AREA E000",
        "\uD800z, U+D800 HIGH SURROGATES D800",
        "ก, U+0E01 THAI CHARACTER KO KAI \"ก\"",
    })
    void aCharacterThatNoFontHasIsNamed(String text, String named) {
        MissingCharacters missing = assertInstanceOf(
                MissingCharacters.class, Fonts.TYPESETTER.set(text, Fonts.of("DejaVu Sans", "Barlow")));
        assertEquals("no glyph for " + named + " in DejaVu Sans, Barlow", missing.message());
    }

    @Test
    void allMissingCharactersAreNamedOnceEach() {
        MissingCharacters missing =
                assertInstanceOf(MissingCharacters.class, Fonts.TYPESETTER.set("山田山本一二三四五", Fonts.of("sans-serif")));
        assertEquals(8, missing.codePoints().size());
        assertTrue(missing.message().contains(" and 3 more in DejaVu Sans"), missing::message);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"a\u200Db", "a\uFE0Fb", "a\u00ADb", "\u202Aab\u202C", "a\u2060b", "\uFEFFab", "a\u2066b\u2069"})
    void charactersThatOnlySteerOthersShowNothing(String text) {
        assertSameCoverage(
                Fonts.set("ab", "Barlow").outline(), Fonts.set(text, "Barlow").outline());
    }

    @Test
    void spacesAreSetEvenWhereTheFontLacksThem() {
        assertEquals(
                Fonts.set("a b", "Dancing Script").outline(),
                Fonts.set("a\u2002b", "Dancing Script").outline());
        assertEquals(Fonts.set("a b", "Barlow"), Fonts.set("a\tb", "Barlow"));
        assertTrue(Fonts.set("   ", "Barlow").ink().isEmpty());
    }

    @Test
    void aLineStandsAtItsAnchorByItsAdvance() {
        TypesetText set = Fonts.set("Hi", "Barlow");
        double left = set.ink().minX();
        assertEquals(10 + 4 * left, set.at(10, 5, TextAnchor.START, 4).bounds().minX(), 1e-9);
        assertEquals(
                10 + 4 * (left - set.advance() / 2),
                set.at(10, 5, TextAnchor.MIDDLE, 4).bounds().minX(),
                1e-9);
        assertEquals(
                10 + 4 * (left - set.advance()),
                set.at(10, 5, TextAnchor.END, 4).bounds().minX(),
                1e-9);
        assertEquals(5, set.at(10, 5, TextAnchor.END, 4).bounds().minY(), 1e-9);
    }

    private static void assertSameCoverage(Path expected, Path actual) {
        assertEquals(0, Coverage.difference(expected, actual), 1e-4);
    }
}
