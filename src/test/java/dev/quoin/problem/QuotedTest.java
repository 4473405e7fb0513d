package dev.quoin.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Given a value that somebody typed, then a message shows it like this. */
class QuotedTest {
    @Test
    void aNameIsShownWhole() {
        assertEquals("'Grace Hopper'", Quoted.of("Grace Hopper"));
    }

    @Test
    void lineBreaksAreShownAsBlanks() {
        assertEquals("'Grace Hopper'", Quoted.of("Grace\r\nHopper"));
    }

    @Test
    void whatWouldGarbleTheMessageIsShownByItsNumber() {
        assertEquals("'Grace<U+202E>Hopper<U+001B>[2J'", Quoted.of("Grace\u202EHopper\u001B[2J"));
        assertEquals("'می\u200Cخواهم'", Quoted.of("می\u200Cخواهم"));
    }

    @Test
    void whatIsLongIsCutBetweenLettersAndNeverThroughOne() {
        assertEquals("'" + "a".repeat(80) + "...'", Quoted.of("a".repeat(10_000)));
        assertEquals("'" + "\uD83D\uDE00".repeat(80) + "...'", Quoted.of("\uD83D\uDE00".repeat(81)));
    }
}
