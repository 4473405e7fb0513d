package dev.quoin.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How papers write figures. */
class FiguresTest {
    private final Figures figures = new Figures();

    @ParameterizedTest
    @CsvSource({
        "0, 0 s",
        "8.44, 8.4 s",
        "59.94, 59.9 s",
        "59.96, 1 min 00 s",
        "60, 1 min 00 s",
        "750, 12 min 30 s",
        "3599.4, 59 min 59 s",
        "3599.6, 1 h 00 min",
        "11100, 3 h 05 min",
        "360000, 100 h 00 min"
    })
    void aTimeIsRoundedToWhatItShows(double seconds, String text) {
        assertEquals(text, figures.time(seconds));
    }

    @Test
    void aFigureHasNoTrailingZeros() {
        assertEquals("246.5", figures.plain(246.50));
        assertEquals("0.045", figures.plain(0.045));
    }
}
