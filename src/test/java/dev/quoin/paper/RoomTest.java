package dev.quoin.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import org.junit.jupiter.api.Test;

/** The room that an outline leaves for writing. */
class RoomTest {
    @Test
    void inACircleItIsTheShorterChord() {
        Room room = new Room(SampleSheet.ROUND);
        // A chord at distance h from the centre of a circle of radius r is 2 sqrt(r2 - h2) long.
        assertEquals(2 * Math.sqrt(13 * 13 - 8 * 8), room.widthBetween(-8, -5), 0.2);
    }

    @Test
    void inARectangleItIsItsWidth() {
        assertEquals(30, new Room(SampleSheet.OBLONG).widthBetween(-5, 5), 1e-9);
    }

    @Test
    void besideAHoleItEndsAtTheHole() {
        Path hole = Path.of(Box.centred(2, 2)).transform(Affine.translate(-10, 0));
        Path plateWithHole =
                Path.builder().append(SampleSheet.OBLONG).append(hole).build();
        assertEquals(18, new Room(plateWithHole).widthBetween(-0.5, 0.5), 1e-9);
    }

    @Test
    void outsideThereIsNone() {
        assertEquals(0, new Room(SampleSheet.OBLONG).widthBetween(8, 9));
    }
}
