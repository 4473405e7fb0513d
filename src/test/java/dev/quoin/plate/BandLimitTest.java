package dev.quoin.plate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.quoin.art.Mark;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import dev.quoin.shop.Cylinder;
import dev.quoin.shop.FieldMirror;
import dev.quoin.shop.Lens;
import dev.quoin.shop.Machine;
import org.junit.jupiter.api.Test;

/** How wide a strip may be, and where it is seen, worked out by hand from the closed forms. */
class BandLimitTest {
    /** A beam of M2 1 and 1 um through a lens of f/D = 40: spot 50.93 um, Rayleigh length pi d^2 / 4 lambda = 2.0372 mm. */
    private static final Machine MACHINE = new Machine(
            50, 1000, 4, 1, "4", 1000, 1, 100, 1, 100, 1000, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, FieldMirror.NONE, 0);

    private static final Lens LENS = new Lens("hand", 110, 160, 180, 0, "");

    @Test
    void theSagAtTheEdgeIsTheRayleighLength() {
        // As 2 r sin^2(w / 4r): sin = sqrt(2.03718 / 60) = 0.184264, its arc 0.185323 rad, so w = 120 of it is 22.2387
        // mm.
        double widest = BandLimit.widest(new Cylinder(60, 60, 90), LENS, MACHINE);
        assertEquals(22.2387, widest, 0.0005);
        assertEquals(2.0372, 30 * (1 - Math.cos(widest / 60)), 0.0005);
    }

    @Test
    void theReachAndTheSlantLimitItToo() {
        Lens narrow = new Lens("narrow", 10, 160, 180, 0, "");
        assertEquals(60 * Math.asin(5 / 30.0), BandLimit.widest(new Cylinder(60, 60, 90), narrow, MACHINE), 1e-9);
        // A pen of 3 mm lies within the depth of focus all round.
        assertEquals(2 * 1.5 * Math.PI / 4, BandLimit.widest(new Cylinder(3, 3, 90), LENS, MACHINE), 1e-9);
    }

    @Test
    void aMarkIsSeenWhereTheSurfaceCarriesIt() {
        // 10 mm around a piece of radius 30 are seen at 30 sin(1/3) = 9.81584 mm.
        Wrap wrap = new Wrap(new Cylinder(60, 60, 90), new Band(-20, 20, 0));
        Box seen = wrap.show(new Mark("cut", Path.of(new Box(-10, -5, 10, 5)), area(new Box(-10, -5, 10, 5))))
                .path()
                .bounds();
        assertEquals(9.81584, seen.maxX(), 1e-5);
        assertEquals(-9.81584, seen.minX(), 1e-5);
        assertEquals(10, wrap.around(9.81584, 3), 1e-4);
    }

    @Test
    void aTaperedPieceChangesTheDrawingsWidth() {
        // Radius 40 below and 30 above, over 100 mm: the wall leans by asin(0.1), and at the upper edge 35 becomes 30.
        Cylinder cup = new Cylinder(80, 60, 100);
        assertEquals(5.7392, cup.tilt(), 1e-4);
        assertEquals(30, cup.radiusAt(50), 1e-12);
        assertEquals(40, cup.radiusAt(-50), 1e-12);
        Wrap wrap = new Wrap(cup, new Band(-10, 10, 0));
        assertEquals(30 * Math.sin(5 / 35.0), seenAt(wrap, 5, 50), 1e-9);
        assertEquals(40 * Math.sin(5 / 35.0), seenAt(wrap, 5, -50), 1e-9);
    }

    private static double seenAt(Wrap wrap, double s, double y) {
        Path line = Path.builder().moveTo(s, y).lineTo(s, y / 2).build();
        Path seen = wrap.show(new Mark("cut", line, area(new Box(0, 0, 1, 1)))).path();
        return seen.flatten(0.001).get(0).x(0);
    }

    private static dev.quoin.geometry.Area area(Box box) {
        return new dev.quoin.geometry.Area(Path.of(box), dev.quoin.geometry.FillRule.NON_ZERO);
    }
}
