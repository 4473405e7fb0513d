package dev.quoin.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Area;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Polyline;
import java.awt.geom.Ellipse2D;
import org.junit.jupiter.api.Test;

/** Given an area, then an outline that means the same by even-odd counting. */
class DisjointOutlineTest {
    private static final Path CIRCLE = Path.of(new Ellipse2D.Double(-5, -5, 10, 10));
    private static final Path SQUARE = Path.of(Box.centred(10, 10));

    @Test
    void oneThatCountsEvenOddStaysAsItIs() {
        Path twice = both(CIRCLE, SQUARE);
        assertSame(twice, DisjointOutline.of(new Area(twice, FillRule.EVEN_ODD)));
    }

    @Test
    void piecesApartStayAsTheyAreCurvesAndAll() {
        Path apart = both(CIRCLE, moved(CIRCLE, 20));
        assertSame(apart, DisjointOutline.of(new Area(apart, FillRule.NON_ZERO)));
    }

    @Test
    void aHoleThatRunsTheOtherWayStaysAHole() {
        Path hole = SQUARE.transform(Affine.scale(-0.5, 0.5));
        Path frame = both(SQUARE, hole);
        assertSame(frame, DisjointOutline.of(new Area(frame, FillRule.NON_ZERO)));
    }

    /** Two squares of 100 mm2, half of one on the other, cover 150 mm2; counted even-odd they would cover 100. */
    @Test
    void piecesThatOverlapAreJoined() {
        Path overlapping = both(SQUARE, moved(SQUARE, 5));
        Path joined = DisjointOutline.of(new Area(overlapping, FillRule.NON_ZERO));
        assertNotSame(overlapping, joined);
        assertEquals(150, size(joined), 1e-9);
        assertEquals(1, joined.flatten(0.001).size());
    }

    @Test
    void aPieceInsideAnotherThatRunsTheSameWayIsNoHole() {
        Path inside = both(SQUARE, SQUARE.transform(Affine.scale(0.5, 0.5)));
        Path joined = DisjointOutline.of(new Area(inside, FillRule.NON_ZERO));
        assertEquals(100, size(joined), 1e-9);
        assertEquals(1, joined.flatten(0.001).size());
    }

    private static Path both(Path one, Path other) {
        return Path.builder().append(one).append(other).build();
    }

    private static Path moved(Path path, double dx) {
        return path.transform(Affine.translate(dx, 0));
    }

    private static double size(Path path) {
        return Math.abs(
                path.flatten(0.001).stream().mapToDouble(Polyline::signedArea).sum());
    }
}
