package dev.quoin.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColourTest {
    /** Names and values from CSS 2.1, section 4.3.6. */
    @ParameterizedTest
    @CsvSource({"#C9cdd2, #c9cdd2", "#2af, #22aaff", "silver, #c0c0c0", "Navy, #000080"})
    void coloursAreReadAsCssWritesThem(String css, String hex) {
        assertEquals(hex, Colour.parse(css).orElseThrow().hex());
    }

    @ParameterizedTest
    @CsvSource({"''", "#12345", "steelish"})
    void otherTextIsNoColour(String text) {
        assertTrue(Colour.parse(text).isEmpty());
    }

    /** Grey 117 has the relative luminance 0.178, grey 118 0.181 (WCAG 2.1). */
    @Test
    void whiteStandsOutMoreOnDarkGreys() {
        assertTrue(new Colour(0x757575).isDark());
        assertFalse(new Colour(0x767676).isDark());
    }
}
