package dev.quoin.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Given how many pieces fail, then so many spare blanks are advised. */
class SpoilageTest {
    @TempDir
    Path folder;

    private SmallJob job;

    @BeforeEach
    void given() throws IOException {
        job = new SmallJob(folder, "Name\nAska\n");
    }

    /** One piece that fails in 3 cases of 10: 0.3^3 is under 5 %, 0.3^2 is over. */
    @Test
    void theSparesStandInTheSummaryAndOnTheSheet() throws IOException {
        RunSummary summary = job.with(JobKey.SPOILAGE, "30").prepare().orElseThrow();
        assertEquals(Map.of(RunSummary.UNNAMED, 2), summary.spares());
        assertTrue(Files.readString(job.run().resolve("run-sheet.html")).contains("and 2 to spare"));
    }

    @Test
    void withoutItNoneAreAdvised() throws IOException {
        assertEquals(Map.of(RunSummary.UNNAMED, 0), job.prepare().orElseThrow().spares());
    }

    @Test
    void whatIsNoPercentageIsAnError() throws IOException {
        assertTrue(job.with(JobKey.SPOILAGE, "2,5").prepare().isEmpty());
        assertEquals(
                "--spoilage: '2,5' is no percentage of pieces that fail; give a number from 0 to 90, such as 2.5",
                job.problems());
    }
}
