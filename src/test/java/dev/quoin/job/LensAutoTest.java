package dev.quoin.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Given the built-in lenses (fields of 100 mm with margins of 4, and of 200 mm with 5) and a jig, then this lens. */
class LensAutoTest {
    private static final String HEADER = "slot,x_mm,y_mm,width_mm,height_mm\n";

    @TempDir
    Path folder;

    private SmallJob job;

    @BeforeEach
    void given() throws IOException {
        job = new SmallJob(folder, "Name\nAska\nBirk\n").with(JobKey.LENS, "auto");
    }

    @Test
    void theSmallestFieldThatReachesEverySlotIsTaken() throws IOException {
        job.prepare();
        assertEquals("short-100", job.table("plates.csv").get(0).get("lens"));
        assertTrue(
                job.problems()
                        .contains("--lens: note: took short-100 (recipe steel-tag, jig tray), the smallest field "
                                + "that reaches every slot (6)"),
                job.problems());
    }

    @Test
    void aLargeJigTakesTheLensOfTheLargeField() throws IOException {
        job.file("tray.csv", HEADER + "A,-80,0,10,10\nB,0,0,10,10\nC,80,0,10,10\n")
                .prepare();
        assertEquals("long-200", job.table("plates.csv").get(0).get("lens"));
    }

    @Test
    void aSlotThatIsLeftEmptyNeedNotBeReached() throws IOException {
        job.file("tray.csv", HEADER + "A,-80,0,10,10\nB,0,0,10,10\nC,80,0,10,10\n")
                .with(JobKey.SKIP_SLOTS, "A,C")
                .prepare();
        assertEquals("short-100", job.table("plates.csv").get(0).get("lens"));
    }

    @Test
    void whereNoneReachesAllTheOneThatReachesMostIsTaken() throws IOException {
        job.file("tray.csv", HEADER + "A,-150,0,10,10\nB,-80,0,10,10\nC,80,0,10,10\nD,150,0,10,10\n")
                .prepare();
        assertEquals("long-200", job.table("plates.csv").get(0).get("lens"));
        assertTrue(job.problems().contains("which reaches the most slots, 2 of 4"), job.problems());
    }

    @Test
    void eachGroupHasItsOwnLens() throws IOException {
        job.file("wide.csv", HEADER + "A,-80,0,10,10\nB,80,0,10,10\n")
                .file("order.csv", "Name,Jig\nAska,wide.csv\nBirk,tray.csv\n")
                .with(JobKey.JIG_COLUMN, "Jig")
                .prepare();
        assertEquals(
                List.of("long-200", "short-100"),
                job.table("plates.csv").stream().map(plate -> plate.get("lens")).toList());
    }
}
