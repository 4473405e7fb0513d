package dev.quoin.lettering;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.ByteBuffer;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Given rules as ISO/IEC 14496-22, clause 6.2, lays them out, the glyphs are told at which one of more than two may begin. */
class GlyphContextsTest {
    /** Glyphs 1 to 9; among those that a rule names may be others. */
    private static final BitSet GLYPHS = BitSet.valueOf(new long[] {0b11_1111_1110});

    /** A GSUB table of one lookup with one rule; offsets in the rule count from its own start. */
    private static GlyphContexts substitution(int type, int... rule) {
        int[] head = {1, 0, 0, 0, 10, 1, 4, type, 0, 1, 8};
        ByteBuffer table = ByteBuffer.allocate(2 * (head.length + rule.length));
        IntStream.concat(IntStream.of(head), IntStream.of(rule)).forEach(number -> table.putShort((short) number));
        return new GlyphContexts(GLYPHS, Map.of("GSUB", table));
    }

    private static List<Integer> beginnings(GlyphContexts contexts) {
        return IntStream.range(0, 20).filter(contexts::mayBeginAt).boxed().toList();
    }

    @Test
    void aSequenceOfThreeGlyphsBeginsAtItsFirst() {
        int[] rule = {1, 8, 1, 14, 1, 1, 3, 1, 4, 3, 0, 4, 5};
        assertEquals(List.of(3), beginnings(substitution(5, rule)));
    }

    @Test
    void aSequenceOfTwoIsSeenInThePairAndOneWithAGlyphThatDoesNotOccurIsNeverMet() {
        assertEquals(List.of(), beginnings(substitution(5, 1, 8, 1, 14, 1, 1, 3, 1, 4, 2, 0, 4)));
        assertEquals(List.of(), beginnings(substitution(5, 1, 8, 1, 14, 1, 1, 3, 1, 4, 3, 0, 4, 12)));
    }

    /** Classes: 2 and 3 are of class 1, 5 of class 2. The one set, of class 1, ends the table. */
    @Test
    void aSequenceOfClassesBeginsAtAllGlyphsOfItsFirstClass() {
        int[] rule = {2, 12, 20, 2, 0, 36, 1, 2, 2, 3, 2, 2, 2, 3, 1, 5, 5, 2, 2, 6, 12, 2, 0, 2, 4, 0, 2, 2, 0};
        assertEquals(List.of(2, 3), beginnings(substitution(5, rule)));
    }

    /** Class 1 is glyph 5. The one set, of class 0, ends the table: what stands behind it in a chain is not looked for. */
    @Test
    void aSequenceOfClassesMayBeginWithOneThatIsNotNamed() {
        int[] rule = {2, 10, 16, 1, 26, 1, 1, 2, 2, 1, 5, 5, 1, 2, 6, 12, 2, 0, 1, 3, 0, 1, 1};
        assertEquals(List.of(2), beginnings(substitution(5, rule)));
    }

    @Test
    void aChainIsOfAllThatItLooksAt() {
        // Before: 7. Changed: 3. After: 8.
        int[] rule = {3, 1, 16, 1, 22, 1, 28, 0, 1, 1, 7, 1, 1, 3, 1, 1, 8};
        assertEquals(List.of(3), beginnings(substitution(6, rule)));
    }
}
