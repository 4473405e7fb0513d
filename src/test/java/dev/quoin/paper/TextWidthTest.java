package dev.quoin.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The estimate of a text's width, and shortening by it. */
class TextWidthTest {
    @Test
    void anIdeographIsAsWideAsTheFontIsHigh() {
        assertTrue(TextWidth.of("\u4e45\u4fdd\u7530") >= 3);
    }

    @Test
    void anAccentThatStandsOnALetterAddsNothing() {
        assertEquals(TextWidth.of("e"), TextWidth.of("e\u0301"), 1e-9);
    }

    @Test
    void aTextThatFitsIsLeftAlone() {
        assertEquals("Ada", TextWidth.shortened("Ada", 3));
    }

    @Test
    void aTextThatDoesNotFitEndsInAnEllipsisAndThenDoes() {
        String shown = TextWidth.shortened("Wilhelmina", 4);
        assertTrue(shown.startsWith("Wi") && shown.endsWith("\u2026"), shown);
        assertTrue(TextWidth.of(shown) <= 4, shown);
    }

    @Test
    void aFamilyOfEmojiIsNeverCutInTwo() {
        String family = "\ud83d\udc69\u200d\ud83d\udc67";
        assertEquals(family + family + "\u2026", TextWidth.shortened(family.repeat(5), 3.2));
    }

    @Test
    void whereNoTwoCharactersFitNothingIsShown() {
        assertEquals("", TextWidth.shortened("Wilhelmina", 1.2));
    }
}
