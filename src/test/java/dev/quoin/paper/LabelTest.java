package dev.quoin.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

/** What is written into a slot on the picture. */
class LabelTest {
    @Test
    void aRoundPocketHasNameNumberAndTextOneUnderTheOther() {
        Label label = Label.of(SampleSheet.filled("A1", 0, 0, 0, SampleSheet.ROUND, 7001, "Ada Marsh"), 1);
        assertEquals(
                List.of("A1", "7001", "Ada Marsh"),
                label.lines().stream().map(Label.Line::text).toList());
        double[] heights = label.lines().stream().mapToDouble(Label.Line::y).toArray();
        assertTrue(heights[0] > heights[1] && heights[1] > heights[2]);
    }

    @Test
    void theNumberIsTheLargest() {
        Label label = Label.of(SampleSheet.filled("A1", 0, 0, 0, SampleSheet.ROUND, 7001, "Ada Marsh"), 1);
        double[] sizes = label.lines().stream().mapToDouble(Label.Line::size).toArray();
        assertTrue(sizes[1] > 1.5 * sizes[0] && sizes[1] > 1.5 * sizes[2]);
    }

    @Test
    void anUprightPocketIsWrittenOnAlongItsLength() {
        Path upright = Path.of(Box.centred(14, 30));
        assertEquals(
                90,
                Label.of(SampleSheet.filled("A", 0, 0, 0, upright, 1, "x"), 1).angle());
        assertEquals(
                0,
                Label.of(SampleSheet.filled("A", 0, 0, 90, upright, 1, "x"), 1).angle());
    }

    @Test
    void aPocketOnItsHeadIsWrittenOnUpright() {
        assertEquals(
                0,
                Label.of(SampleSheet.filled("A", 0, 0, 180, SampleSheet.OBLONG, 1, "x"), 1)
                        .angle());
    }

    @Test
    void aLowPocketHasNameAndNumberSideBySide() {
        Path low = Path.of(Box.centred(30, 4));
        Label label = Label.of(SampleSheet.filled("A", 0, 0, 0, low, 7001, "x"), 1);
        assertEquals(2, label.lines().size());
        assertTrue(label.lines().get(0).x() < label.lines().get(1).x());
    }

    @Test
    void aSlotThatStaysEmptySaysWhy() {
        Label label = Label.of(SampleSheet.unfilled("A5", 0, 0, SampleSheet.ROUND, SlotState.OUT_OF_REACH), 1);
        assertEquals(
                List.of("A5", "out of reach"),
                label.lines().stream().map(Label.Line::text).toList());
    }

    /** Law: whatever is written, at whatever turn, no line is wider than its pocket there, nor stands on its head. */
    @Property(tries = 200, seed = "2026")
    void everyLineLiesInItsPocket(
            @ForAll @DoubleRange(min = -400, max = 400) double turn,
            @ForAll @DoubleRange(min = 0.3, max = 2) double unit,
            @ForAll @AlphaChars @StringLength(min = 1, max = 30) String first,
            @ForAll @AlphaChars @StringLength(min = 1, max = 30) String second) {
        SlotView slot = SampleSheet.filled("A1", 5, 7, turn, SampleSheet.ROUND, 7001, first + " " + second, second);
        Label label = Label.of(slot, unit);
        assertTrue(label.angle() > -90 - 1e-9 && label.angle() <= 90 + 1e-9);
        Room room = new Room(slot.pocket().transform(Affine.rotate(turn - label.angle())));
        for (Label.Line line : label.lines()) {
            double wide = TextWidth.of(line.text()) * line.size();
            double free = room.widthBetween(line.y() - line.size() * 0.3, line.y() + line.size() * 0.3);
            assertTrue(wide <= free, line + " has only " + free);
        }
    }
}
