package dev.quoin.lettering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import dev.quoin.drawing.TextAnchor;
import dev.quoin.geometry.Area;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * Given the Big List of Naughty Strings (source and licence: README.md beside the data), then each is set with every
 * grapheme inked, or what is missing is named, or it is too long; none crashes, hangs or silently loses a character.
 */
class NaughtyStringsTest {
    private static final Box BOX = Box.centred(400, 200);
    private static final FitRequest REQUEST = new FitRequest(
            new Area(Path.of(BOX), FillRule.NON_ZERO),
            TextAnchor.MIDDLE,
            VerticalAlign.MIDDLE,
            0,
            0.05,
            OptionalDouble.of(20),
            1,
            0.5);
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private final FontSet fonts = Fonts.of("DejaVu Sans");
    private final Fitter fitter = new Fitter(Fonts.TYPESETTER);

    @Test
    void eachIsSetWholeOrReported() throws IOException {
        int set = 0;
        int reported = 0;
        for (String text : strings()) {
            FitResult result = assertTimeoutPreemptively(PATIENCE, () -> fitter.fit(text, fonts, REQUEST), text);
            if (result instanceof Fitted fitted) {
                assertEveryGraphemeIsInked(text);
                assertTrue(BOX.contains(fitted.outline().bounds(), 1e-9), text);
                set++;
            } else if (result instanceof MissingCharacters missing) {
                assertAllAreAbsent(text, missing);
                reported++;
            }
        }
        // None of the strings is too long for this box, so each is one or the other, and there are many of both.
        assertTrue(
                set > 400 && reported > 40 && set + reported == strings().size(),
                set + " set, " + reported + " reported");
    }

    /** Each visible grapheme changes the drawing: without it there is less ink. */
    private void assertEveryGraphemeIsInked(String text) {
        TextRuns runs = TextRuns.of(text.strip(), fonts);
        BitSet inked = new BitSet();
        for (TextPart part : runs.parts()) {
            char[] line = runs.line().toCharArray();
            inked.or(part.typeface()
                    .set(line, part.start(), part.end(), part.isRightToLeft())
                    .inked(part.end()));
        }
        int at = 0;
        for (String grapheme : runs.graphemes()) {
            boolean visible = grapheme.codePoints().anyMatch(NaughtyStringsTest::leavesInk);
            int ink = inked.nextSetBit(at);
            assertTrue(!visible || (ink >= 0 && ink < at + grapheme.length()), () -> text + " lost " + grapheme);
            at += grapheme.length();
        }
    }

    /** By the platform's own view of what characters are, not by ours. */
    private static boolean leavesInk(int codePoint) {
        return Character.isLetterOrDigit(codePoint)
                || Set.of((int) Character.OTHER_PUNCTUATION, (int) Character.MATH_SYMBOL)
                        .contains(Character.getType(codePoint));
    }

    /** What is reported is truly absent from the font, or shows nothing in it. */
    private static void assertAllAreAbsent(String text, MissingCharacters missing) {
        Set<Integer> inText = new TreeSet<>();
        java.text.Normalizer.normalize(text, java.text.Normalizer.Form.NFC)
                .codePoints()
                .forEach(inText::add);
        assertTrue(inText.containsAll(missing.codePoints()), () -> text + ": " + missing);
        FontSet font = Fonts.of("DejaVu Sans");
        for (int codePoint : missing.codePoints()) {
            Typeset alone = Fonts.TYPESETTER.setShaped(Character.toString(codePoint), font);
            boolean mark = Character.getType(codePoint) == Character.NON_SPACING_MARK;
            assertTrue(mark || alone instanceof MissingCharacters, () -> text + ": " + missing.message());
        }
    }

    @Test
    void theListIsWhole() throws IOException {
        assertEquals(485, strings().size());
    }

    private static List<String> strings() throws IOException {
        return new ArrayList<>(Arrays.asList(new ObjectMapper()
                .readValue(
                        NaughtyStringsTest.class.getResourceAsStream("/dev/quoin/naughty/blns.json"), String[].class)));
    }
}
