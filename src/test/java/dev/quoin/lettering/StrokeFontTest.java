package dev.quoin.lettering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.geometry.Area;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Polyline;
import java.text.Normalizer;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Given a stroke font, then letters are open strokes, with their accents. */
class StrokeFontTest {
    /** Hershey's glyph of H in futural.jhf: "KFK[ RYFY[ RKPYP", edges "G]": two stems 14 apart, a bar, 21 high. */
    @Test
    void theLetterHIsThreeStrokes() {
        TypesetText h = Fonts.set("H", "Stroke Sans");
        assertTrue(h.strokes());
        assertEquals(0.7, h.capHeight());
        assertEquals(22 / 30.0, h.advance(), 1e-12);
        List<Polyline> strokes = h.outline().flatten(0.01);
        assertEquals(3, strokes.size());
        assertTrue(strokes.stream().noneMatch(Polyline::closed));
        assertEquals((21 + 21 + 14) / 30.0, h.outline().length(0.01), 1e-12);
        assertEquals(new Box(4 / 30.0, 0, 18 / 30.0, 0.7), h.ink());
    }

    @ParameterizedTest
    @ValueSource(strings = {"Stroke Sans", "Stroke Serif", "Stroke Script"})
    void allOfAsciiIsThere(String family) {
        for (char c = '!'; c <= '~'; c++) {
            assertFalse(Fonts.set(String.valueOf(c), family).outline().isEmpty(), String.valueOf(c));
        }
        assertTrue(Fonts.set(" ", family).advance() > 0.2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Zoë", "Łukasz", "Nuñez", "Ďáblíková", "Nguyễn", "Ştefan", "İpek", "Ågot", "Đorđe"})
    void lettersWithAccentsArePutTogether(String name) {
        TypesetText set = Fonts.set(name, "Stroke Sans");
        TypesetText decomposed = Fonts.set(Normalizer.normalize(name, Normalizer.Form.NFD), "Stroke Sans");
        assertEquals(set, decomposed);
        String bare = Normalizer.normalize(name, Normalizer.Form.NFD).replaceAll("\\p{M}", "");
        if (!bare.equals(name)) {
            assertTrue(set.outline().length(0.01)
                    > Fonts.set(bare, "Stroke Sans").outline().length(0.01) - 0.2);
            assertEquals(Fonts.set(bare, "Stroke Sans").advance(), set.advance(), 1e-12);
        }
    }

    @Test
    void anAccentStandsClearOfItsLetter() {
        double top = Fonts.set("e", "Stroke Sans").ink().maxY();
        TypesetText accented = Fonts.set("ë", "Stroke Sans");
        assertTrue(accented.outline().flatten(0.01).stream()
                .filter(stroke -> stroke.y(0) > top)
                .allMatch(stroke -> stroke.y(0) >= top + 1.9 / 30));
        assertEquals(top + 4 / 30.0, accented.ink().maxY(), 1e-9);
    }

    @Test
    void anIUnderAnAccentLosesItsDot() {
        assertEquals(
                Fonts.set("ı", "Stroke Sans").outline().flatten(0.01).size() + 1,
                Fonts.set("í", "Stroke Sans").outline().flatten(0.01).size());
        assertEquals(2, Fonts.set("i", "Stroke Sans").outline().flatten(0.01).size());
    }

    @Test
    void aLetterThatTheFontLacksIsReported() {
        MissingCharacters missing =
                assertInstanceOf(MissingCharacters.class, Fonts.TYPESETTER.set("Жан", Fonts.of("Stroke Sans")));
        assertTrue(missing.message().contains("U+0416 CYRILLIC CAPITAL LETTER ZHE"), missing::message);
    }

    @Test
    void strokesAndOutlinesAreNeverMixed() {
        assertEquals(
                List.of("Stroke Sans"), Fonts.of("Stroke Sans", "sans-serif").families());
        assertEquals(List.of("Barlow"), Fonts.of("Barlow", "Stroke Sans").families());
    }

    @Test
    void strokesAreFittedLikeOutlines() {
        FitRequest request = FitRequest.in(new Area(Path.of(new Box(0, 0, 30, 8)), FillRule.NON_ZERO));
        for (String text : List.of("Zoë", "-", "I")) {
            Fitted fitted = assertInstanceOf(
                    Fitted.class, new Fitter(Fonts.TYPESETTER).fit(text, Fonts.of("Stroke Sans"), request));
            assertTrue(fitted.strokes());
            assertTrue(new Box(0, 0, 30, 8).contains(fitted.outline().bounds(), 0));
        }
    }
}
