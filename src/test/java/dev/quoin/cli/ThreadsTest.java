package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The number of threads changes how long a run takes, and nothing in it. */
class ThreadsTest {
    private static final int ROWS = 400;

    @TempDir
    private Path folder;

    /** Names of all lengths, some of them too long; colours repeat, so that what is drawn anew is shared. */
    private JobFolder job() {
        StringBuilder order = new StringBuilder("Name,Height\n");
        for (int i = 0; i < ROWS; i++) {
            order.append("Nadia Ilse ".repeat(6), 0, 4 + 7 * i % 60)
                    .append(',')
                    .append(1 + i % 3)
                    .append('\n');
        }
        return new JobFolder(folder)
                .file("order.csv", order.toString())
                .template(JobFolder.text("${name}") + "<rect x=\"1\" y=\"1\" width=\"4\" height=\"${height}\"/>")
                .set("skip-bad-rows", "true");
    }

    @Test
    void theRunIsTheSameToTheByteAndSoIsWhatIsTold() throws IOException {
        JobFolder job = job();
        QuoinRun alone = job.prepare("--threads", "1");
        SortedMap<String, byte[]> one = JobFolder.contents(job.run());
        QuoinRun together = job.prepare("--threads", "4", "--replace");
        SortedMap<String, byte[]> four = JobFolder.contents(job.run());
        assertEquals(0, alone.status());
        assertTrue(alone.err().size() > 10, "some rows are too long");
        assertEquals(alone.err(), together.err());
        assertEquals(alone.out(), together.out());
        assertEquals(one.keySet(), four.keySet());
        for (Map.Entry<String, byte[]> file : one.entrySet()) {
            assertArrayEquals(file.getValue(), four.get(file.getKey()), file.getKey());
        }
    }

    @Test
    void aNumberThatIsNoneIsRefused() {
        for (String wrong : new String[] {"0", "many", "-2", "1000"}) {
            QuoinRun run = new JobFolder(folder).prepare("--threads", wrong);
            assertEquals(1, run.status());
            assertEquals(
                    "--threads: '" + wrong + "' is no whole number from 1 to 256; give one, or leave it out",
                    run.err().get(0));
        }
    }
}
