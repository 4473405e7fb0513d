package dev.quoin.lettering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.drawing.TextAnchor;
import dev.quoin.geometry.Area;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Given a text and a rectangle, then this size, these lines, this place. */
class FitterTest {
    private static final Box BOX = new Box(10, 20, 50, 30);
    private static final Fitter FITTER = new Fitter(Fonts.TYPESETTER);
    private static final FontSet SANS = Fonts.of("sans-serif");

    @Test
    void aShortTextFillsTheHeightWithItsInk() {
        Fitted fitted = fitted("Ag", request(1, 1));
        TypesetText set = Fonts.set("Ag", "sans-serif");
        assertEquals(10 / set.ink().height() * set.capHeight(), fitted.capHeight(), 1e-6);
        assertEquals(10, fitted.outline().bounds().height(), 1e-6);
    }

    @Test
    void aLongTextFillsTheWidthWithItsInk() {
        Fitted fitted = fitted("Bartholomew Featherstone", request(1, 1));
        TypesetText set = Fonts.set("Bartholomew Featherstone", "sans-serif");
        assertEquals(40 / set.ink().width() * set.capHeight(), fitted.capHeight(), 1e-6);
        assertEquals(40, fitted.outline().bounds().width(), 1e-6);
    }

    @Test
    void theGreatestHeightHolds() {
        FitRequest request = request(1, 1).withGreatest(3);
        Fitted fitted = fitted("HH", request);
        assertEquals(3, fitted.capHeight(), 1e-12);
        assertEquals(20 + 3.5, fitted.outline().bounds().minY(), 0.05);
    }

    @ParameterizedTest
    @EnumSource(VerticalAlign.class)
    void namesWithAndWithoutDescendersStandOnOneBaseline(VerticalAlign align) {
        FitRequest request = request(TextAnchor.MIDDLE, align, 1).withGreatest(3);
        double cap =
                switch (align) {
                    case TOP -> 30;
                    case MIDDLE -> 26.5;
                    case BOTTOM -> 23;
                };
        assertEquals(cap, fitted("HH", request).outline().bounds().maxY(), 1e-6);
        if (align != VerticalAlign.BOTTOM) {
            assertEquals(cap, fitted("Hg", request).outline().bounds().maxY(), 0.15);
        } else {
            assertEquals(20, fitted("Hg", request).outline().bounds().minY(), 1e-6);
        }
    }

    @ParameterizedTest
    @EnumSource(TextAnchor.class)
    void theInkTouchesTheSideItIsAnchoredAt(TextAnchor anchor) {
        Box ink = fitted("Ada", request(anchor, VerticalAlign.MIDDLE, 1))
                .outline()
                .bounds();
        switch (anchor) {
            case START -> assertEquals(10, ink.minX(), 1e-6);
            case MIDDLE -> assertEquals(30, ink.centre().x(), 1e-6);
            case END -> assertEquals(50, ink.maxX(), 1e-6);
        }
    }

    @Test
    void theInsetKeepsInkFromTheEdge() {
        FitRequest request =
                new FitRequest(space(), TextAnchor.MIDDLE, VerticalAlign.MIDDLE, 2, 1, OptionalDouble.empty(), 1, 1);
        assertTrue(BOX.grow(-2).contains(fitted("Ag", request).outline().bounds(), 1e-6));
        assertEquals(6, fitted("Ag", request).outline().bounds().height(), 1e-6);
    }

    @Test
    void aTextIsBrokenWhereThatMakesItLarger() {
        assertEquals(
                List.of("Maria Magdalena", "von Hohenstein"),
                fitted("Maria Magdalena von Hohenstein", request(2, 1)).lines());
        assertEquals(List.of("Ada"), fitted("Ada", request(2, 1)).lines());
        assertEquals(
                List.of("Jean-", "Baptiste"),
                fitted(
                                "Jean-Baptiste",
                                new FitRequest(
                                        new Area(Path.of(new Box(0, 0, 10, 10)), FillRule.NON_ZERO),
                                        TextAnchor.MIDDLE,
                                        VerticalAlign.MIDDLE,
                                        0,
                                        1,
                                        OptionalDouble.empty(),
                                        2,
                                        1))
                        .lines());
    }

    @Test
    void baselinesLieOnePointTwoFontSizesApart() {
        Fitted fitted = fitted("H\nH", request(2, 1));
        double size = fitted.capHeight() / SANS.capHeight();
        assertEquals(1.2 * size + fitted.capHeight(), fitted.outline().bounds().height(), 1e-6);
    }

    @Test
    void aLineBreakOfTheTextIsKeptIfThereAreAsManyLines() {
        assertEquals(List.of("A", "B C"), fitted("A\r\nB C", request(2, 1)).lines());
        assertEquals(List.of("A B C"), fitted("A\nB C", request(1, 1)).lines());
    }

    @Test
    void lettersAreNarrowedOnlyToReachTheLeastHeightAndOnlyAsFarAsThatTakes() {
        String text = "Bartholomew Featherstone";
        double plain = fitted(text, request(1, 1)).capHeight();
        Fitted squeezed = fitted(text, least(plain * 1.25, 1, 0.7));
        assertEquals(0.8, squeezed.squeeze(), 1e-6);
        assertEquals(plain * 1.25, squeezed.capHeight(), 1e-9);
        assertEquals(40, squeezed.outline().bounds().width(), 1e-6);
        assertEquals(1, fitted(text, least(plain * 0.9, 1, 0.7)).squeeze());
        assertEquals(1, fitted(text, least(plain * 1.2, 2, 0.7)).squeeze(), "broken before it is narrowed");
    }

    @Test
    void aTextThatDoesNotFitSaysWhatWould() {
        String text = "Bartholomew Featherstone";
        double plain = fitted(text, request(1, 1)).capHeight();
        TooLong tooLong = assertInstanceOf(TooLong.class, FITTER.fit(text, SANS, least(plain * 2, 1, 0.8)));
        assertEquals(plain / 0.8, tooLong.capHeight(), 1e-6);
        assertInstanceOf(Fitted.class, FITTER.fit(text, SANS, least(tooLong.capHeight() * (1 - 1e-9), 1, 0.8)));
    }

    @Test
    void anInsetThatLeavesNoRoomIsTooLong() {
        FitRequest request =
                new FitRequest(space(), TextAnchor.MIDDLE, VerticalAlign.MIDDLE, 6, 1, OptionalDouble.empty(), 1, 1);
        assertEquals(new TooLong(0), FITTER.fit("A", SANS, request));
    }

    @Test
    void missingCharactersOfAllLinesAreReported() {
        MissingCharacters missing =
                assertInstanceOf(MissingCharacters.class, FITTER.fit("山 Jo 田", SANS, request(3, 1)));
        assertEquals(List.of((int) '山', (int) '田'), missing.codePoints());
    }

    @Test
    void aTextThatShowsNothingFits() {
        assertTrue(fitted("", request(1, 1)).outline().isEmpty());
        assertTrue(fitted(" \t ", request(2, 1)).outline().isEmpty());
        assertTrue(fitted("\u200D", request(1, 1)).outline().isEmpty());
    }

    @Property(tries = 300, seed = "2026")
    void inkLiesInsideItsBox(
            @ForAll("names") String name,
            @ForAll @DoubleRange(min = 5, max = 80) double width,
            @ForAll @DoubleRange(min = 3, max = 40) double height,
            @ForAll @IntRange(min = 1, max = 3) int lines,
            @ForAll TextAnchor anchor,
            @ForAll VerticalAlign align) {
        Box box = new Box(-7, 3, -7 + width, 3 + height);
        FitRequest request = new FitRequest(
                new Area(Path.of(box), FillRule.NON_ZERO),
                anchor,
                align,
                0.25,
                0.01,
                OptionalDouble.empty(),
                lines,
                0.6);
        Fitted fitted = fitted(name, request);
        assertTrue(box.grow(-0.25).contains(fitted.outline().bounds(), 0), () -> name + " " + fitted);
        assertEquals(fitted, fitted(name, request), "the same to the last digit");
    }

    @Property(tries = 200, seed = "2026")
    void noOrderOfBreaksGivesALargerSize(
            @ForAll("names") String name,
            @ForAll @DoubleRange(min = 5, max = 80) double width,
            @ForAll @IntRange(min = 1, max = 4) int lines) {
        FitRequest request = new FitRequest(
                new Area(Path.of(new Box(0, 0, width, 20)), FillRule.NON_ZERO),
                TextAnchor.MIDDLE,
                VerticalAlign.MIDDLE,
                0,
                0.01,
                OptionalDouble.empty(),
                lines,
                1);
        double best = everyWay(List.of(name.split(" ")), lines).stream()
                .mapToDouble(way -> sizeByHand(way, width, 20))
                .max()
                .orElseThrow();
        assertEquals(best, fitted(name, request).capHeight(), 1e-6 * best);
    }

    @Provide
    Arbitrary<String> names() {
        Arbitrary<String> word = Arbitraries.of(
                "Zoë",
                "Łukasz",
                "Nuñez",
                "Ng",
                "von",
                "der",
                "Maximilian",
                "Jo",
                "Þórður",
                "Ágýj",
                "O'Brien",
                "de",
                "Ünal");
        return word.list().ofMinSize(1).ofMaxSize(6).map(words -> String.join(" ", words));
    }

    /** All ways to break words into at most so many lines, by trying each gap. */
    private static List<List<String>> everyWay(List<String> words, int lines) {
        List<List<String>> ways = new ArrayList<>();
        ways.add(List.of(String.join(" ", words)));
        if (lines > 1) {
            for (int i = 1; i < words.size(); i++) {
                String first = String.join(" ", words.subList(0, i));
                for (List<String> rest : everyWay(words.subList(i, words.size()), lines - 1)) {
                    List<String> way = new ArrayList<>(List.of(first));
                    way.addAll(rest);
                    ways.add(way);
                }
            }
        }
        return ways;
    }

    private static double sizeByHand(List<String> lines, double width, double height) {
        double wide = 0;
        double top = Double.NEGATIVE_INFINITY;
        double bottom = Double.POSITIVE_INFINITY;
        for (int i = 0; i < lines.size(); i++) {
            Box ink = Fonts.set(lines.get(i), "sans-serif").ink();
            wide = Math.max(wide, ink.width());
            top = Math.max(top, ink.maxY() - 1.2 * i);
            bottom = Math.min(bottom, ink.minY() - 1.2 * i);
        }
        return Math.min(width / wide, height / (top - bottom)) * SANS.capHeight();
    }

    private static Fitted fitted(String text, FitRequest request) {
        FitResult result = FITTER.fit(text, SANS, request);
        return assertInstanceOf(Fitted.class, result, () -> text + ": " + result);
    }

    private static Area space() {
        return new Area(Path.of(BOX), FillRule.NON_ZERO);
    }

    private static FitRequest request(int lines, double squeeze) {
        return least(1, lines, squeeze);
    }

    private static FitRequest least(double least, int lines, double squeeze) {
        return new FitRequest(
                space(), TextAnchor.MIDDLE, VerticalAlign.MIDDLE, 0, least, OptionalDouble.empty(), lines, squeeze);
    }

    private static FitRequest request(TextAnchor anchor, VerticalAlign align, int lines) {
        return new FitRequest(space(), anchor, align, 0, 1, OptionalDouble.empty(), lines, 1);
    }
}
