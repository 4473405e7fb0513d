package dev.quoin.code;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Polyline;
import java.awt.Shape;
import java.util.BitSet;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Given dark and light modules, then these outlines. */
class ModuleGridTest {
    @Test
    void neighboursShareOneOutline() {
        assertEquals(
                Path.builder()
                        .moveTo(1.5, -1)
                        .lineTo(1.5, 1)
                        .lineTo(-1.5, 1)
                        .lineTo(-1.5, -1)
                        .close()
                        .build(),
                grid("###").outline(1, 2));
    }

    @Test
    void aHoleRunsTheOtherWay() {
        List<Polyline> lines = grid("###", "#.#", "###").outline(1, 1).flatten(0.1);
        assertEquals(
                List.of(-1.0, 9.0),
                lines.stream().map(Polyline::signedArea).sorted().toList());
    }

    @Test
    void modulesThatTouchAtACornerAreKeptApart() {
        List<Polyline> lines = grid("#.", ".#").outline(1, 1).flatten(0.1);
        assertEquals(List.of(1.0, 1.0), lines.stream().map(Polyline::signedArea).toList());
        assertEquals(4, lines.get(0).size());
    }

    @Property(tries = 300, seed = "2026")
    void exactlyTheDarkModulesLieInsideByBothRules(
            @ForAll @IntRange(min = 1, max = 9) int columns,
            @ForAll @IntRange(min = 1, max = 9) int rows,
            @ForAll long seed) {
        ModuleGrid grid = new ModuleGrid(columns, rows, random(columns * rows, seed));
        Path outline = grid.outline(2, 3);
        for (FillRule rule : FillRule.values()) {
            Shape shape = outline.toShape(rule);
            for (int row = -1; row <= rows; row++) {
                for (int column = -1; column <= columns; column++) {
                    double x = (column + 0.5 - columns / 2.0) * 2;
                    double y = (rows / 2.0 - row - 0.5) * 3;
                    assertEquals(grid.isDark(column, row), shape.contains(x, y));
                }
            }
        }
        double area =
                outline.flatten(0.1).stream().mapToDouble(Polyline::signedArea).sum();
        assertEquals(6.0 * grid.dark().cardinality(), area, 1e-9);
    }

    private static BitSet random(int size, long seed) {
        BitSet bits = new BitSet(size);
        new java.util.Random(seed).ints(size, 0, size).forEach(bits::set);
        return bits;
    }

    private static ModuleGrid grid(String... rows) {
        BitSet dark = new BitSet();
        String all = String.join("", rows);
        for (int i = 0; i < all.length(); i++) {
            dark.set(i, all.charAt(i) == '#');
        }
        return new ModuleGrid(rows[0].length(), rows.length, dark);
    }
}
