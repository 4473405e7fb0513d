package dev.quoin.art;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** What is marked does not depend on a colour: marks on a dark blank may well be drawn white. */
class WhitePaintTest {
    @Test
    void aWhiteShapeIsMarkedLikeAnyOtherAndCoversNothing() {
        Merged order = Merged.columns("Name");
        Template template = order.compile("""
                <svg xmlns="http://www.w3.org/2000/svg" width="10mm" height="10mm" viewBox="0 0 10 10">
                <rect x="1" y="1" width="8" height="8" fill="black"/><circle cx="5" cy="5" r="2" fill="white"/></svg>""");
        assertEquals(2, order.drawn(template, "Ada").orElseThrow().marks().size());
    }
}
