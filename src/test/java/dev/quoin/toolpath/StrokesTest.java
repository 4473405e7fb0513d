package dev.quoin.toolpath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Given strokes of every make, the path that is drawn of them is read back as the same strokes. */
class StrokesTest {
    private static Strokes of(double[]... strokes) {
        Strokes.Builder builder = new Strokes.Builder();
        for (double[] stroke : strokes) {
            for (int i = 0; i < stroke.length; i += 2) {
                builder.point(stroke[i], stroke[i + 1]);
            }
            builder.end();
        }
        return builder.build();
    }

    private static void assertReadBack(double[]... strokes) {
        Strokes drawn = of(strokes);
        assertEquals(List.of(drawn), BeamPath.along(List.of(drawn.toPath())).passes());
    }

    @Test
    void openLines() {
        assertReadBack(new double[] {0, 0, 1, 1}, new double[] {5, 5, 6, 5, 6, 7});
    }

    @Test
    void dotsFirstLastAndInARow() {
        assertReadBack(new double[] {3, 4});
        assertReadBack(
                new double[] {0, 0}, new double[] {1, 1}, new double[] {2, 2, 3, 3}, new double[] {4, 4}, new double[] {
                    5, 5
                });
    }

    @Test
    void thereAndBackAndAroundARing() {
        assertReadBack(
                new double[] {0, 0, 2, 0, 0, 0},
                new double[] {5, 5, 7, 5, 6, 7, 5, 5},
                new double[] {5, 5},
                new double[] {8, 8, 9, 9});
    }

    @Test
    void noStrokesAreNoPath() {
        assertTrue(Strokes.EMPTY.toPath().isEmpty());
    }
}
