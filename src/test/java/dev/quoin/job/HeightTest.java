package dev.quoin.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Given a tray whose pockets are not all of one height, then those out of the focus are told. */
class HeightTest {
    private static final String TRAY = """
            slot,x_mm,y_mm,width_mm,height_mm,z_mm
            A1,10,30,10,10,
            A2,30,30,10,10,0.2
            B1,10,10,10,10,6
            B2,30,10,10,10,6
            C1,10,50,10,10,-9
            """;

    @TempDir
    private Path folder;

    private List<String> told(String order) throws IOException {
        SmallJob job = new SmallJob(folder, order).file("tray.csv", TRAY);
        job.prepare();
        return job.problems().lines().filter(line -> line.contains("focus")).toList();
    }

    @Test
    void pocketsOutsideTheDepthOfFocusAreTold() throws IOException {
        // By hand: spot 4 x 1.4 x 0.001064 x 290 / (pi 7) = 0.07857 mm; half the depth of focus
        // pi 0.07857^2 / (4 x 1.4 x 0.001064) = 3.255 mm; at 6 mm 1 / (1 + (6 / 3.255)^2) = 23 %, at 9 mm 12 %.
        assertEquals(
                List.of(
                        "built-in shop/recipes.csv:2: warning: jig 'tray', slot B1 (and 1 more) lies 6 mm above the focus, lens 'long-200' has"
                                + " a depth of focus of 3.255 mm each way: the fluence falls to 23 %; bring the surface into the focus",
                        "built-in shop/recipes.csv:2: warning: jig 'tray', slot C1 lies 9 mm below the focus, lens 'long-200' has a depth of"
                                + " focus of 3.255 mm each way: the fluence falls to 12 %; bring the surface into the focus"),
                told("Name\na\nb\nc\nd\ne\n"));
    }

    @Test
    void pocketsThatStayEmptyAreNot() throws IOException {
        List<String> told = told("Name\na\nb\n");
        assertEquals(List.of(), told);
        assertFalse(told.contains("B1"));
    }
}
