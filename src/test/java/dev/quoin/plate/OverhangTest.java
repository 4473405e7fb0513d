package dev.quoin.plate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.quoin.geometry.Box;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OverhangTest {
    private static final Box POCKET = Box.centred(40, 20);

    @ParameterizedTest
    @CsvSource({
        "-23, -5, 0, 5, LEFT, 3",
        "0, -5, 21, 5, RIGHT, 1",
        "0, 0, 5, 12, TOP, 2",
        "0, -14, 5, 0, BOTTOM, 4",
        "-21, -14, 22, 12, BOTTOM, 4",
    })
    void theEdgeThatInkLeavesMost(double minX, double minY, double maxX, double maxY, Overhang.Edge edge, double mm) {
        assertEquals(Optional.of(new Overhang(mm, edge)), Overhang.of(new Box(minX, minY, maxX, maxY), POCKET));
    }

    @Test
    void inkInsideTheBoxHasNone() {
        assertEquals(Optional.empty(), Overhang.of(Box.centred(40, 20), POCKET));
    }
}
