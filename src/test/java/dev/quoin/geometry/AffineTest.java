package dev.quoin.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.AffineTransform;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class AffineTest {
    @Test
    void quarterTurnsAreExact() {
        assertEquals(new Point(0, 1), Affine.rotate(90).apply(new Point(1, 0)));
        assertEquals(new Point(-1, 0), Affine.rotate(-180).apply(new Point(1, 0)));
        assertEquals(new Point(0, -1), Affine.rotate(270).apply(new Point(1, 0)));
        assertEquals(Affine.rotate(-90), Affine.rotate(270));
        assertEquals(Affine.IDENTITY, Affine.rotate(360));
    }

    /** The platform's transforms, applied one after the other. */
    @Property(tries = 200, seed = "2026")
    void oneMoveAndThenAnotherIsWhatThePlatformMakesOfIt(
            @ForAll @DoubleRange(min = -360, max = 360) double angle,
            @ForAll @DoubleRange(min = -100, max = 100) double dx) {
        Affine ours = Affine.rotate(angle).then(Affine.scale(2, -3)).then(Affine.translate(dx, 7));
        AffineTransform theirs = AffineTransform.getTranslateInstance(dx, 7);
        theirs.scale(2, -3);
        theirs.rotate(Math.toRadians(angle));
        double[] expected = {3, 4};
        theirs.transform(expected, 0, expected, 0, 1);
        assertEquals(expected[0], ours.x(3, 4), 1e-9);
        assertEquals(expected[1], ours.y(3, 4), 1e-9);
    }

    @Property(tries = 200, seed = "2026")
    void theInverseUndoes(@ForAll @DoubleRange(min = -360, max = 360) double angle) {
        Affine move = Affine.rotate(angle).then(new Affine(2, 0.5, -0.25, 3, 10, -4));
        Point there = move.apply(new Point(5, 6));
        Point back = move.inverse().apply(there);
        assertEquals(5, back.x(), 1e-9);
        assertEquals(6, back.y(), 1e-9);
    }

    @Test
    void whatFlattensThePlaneCannotBeUndone() {
        assertThrows(ArithmeticException.class, () -> Affine.scale(1, 0).inverse());
    }

    @Test
    void onlyATurnAndAShiftAreRigid() {
        assertTrue(Affine.rotate(33).then(Affine.translate(1, 2)).isRigid());
        assertFalse(Affine.scale(-1, 1).isRigid());
        assertFalse(Affine.scale(1.01, 1.01).isRigid());
        assertFalse(new Affine(1, 0, 0.2, 1, 0, 0).isRigid());
        assertEquals(33, Affine.rotate(33).rotation(), 1e-12);
    }

    @Test
    void boxesHoldTouchAndGrow() {
        Box box = Box.centred(4, 2);
        assertTrue(box.contains(new Box(-2, -1, 2.0005, 1), 1e-3));
        assertFalse(box.contains(new Box(-2, -1, 2.01, 1), 1e-3));
        assertTrue(box.contains(Box.EMPTY, 0));
        assertTrue(box.meets(new Box(2, 1, 3, 3)));
        assertFalse(box.meets(new Box(2.1, 0, 3, 1)));
        assertEquals(Box.centred(6, 4), box.grow(1));
        assertTrue(Box.EMPTY.grow(1).isEmpty());
        assertEquals(box, Box.EMPTY.union(box));
    }
}
