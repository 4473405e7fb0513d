package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Given plates that were timed, then calibrate says nothing but what is ours: its solver would praise itself on some machines. */
class CalibrateInAProcessTest {
    private static final int SLOTS = 4;

    @TempDir
    Path folder;

    @Test
    void saysWhatItSaysInThisProcess() throws Exception {
        Program quoin = new Program(folder);
        List<String> command = new ArrayList<>(List.of("calibrate", "--out", "here.csv"));
        for (int items = 1; items <= SLOTS; items++) {
            command.add(measured(items, quoin));
        }
        Program.Ended here = quoin.run(command.toArray(String[]::new));
        assertEquals(0, here.status(), here.err());
        assertTrue(here.out().contains("here.csv"), here.out());

        command.set(2, "process.csv");
        int status = JavaProcess.start(folder, List.of(), command.toArray(String[]::new))
                .waitFor();
        List<String> said = Files.readAllLines(folder.resolve("said.txt"));
        assertEquals(0, status, said::toString);
        assertEquals(
                sorted(here.out() + here.err()), sorted(String.join("\n", said).replace("process.csv", "here.csv")));
        assertEquals(Files.readString(folder.resolve("here.csv")), Files.readString(folder.resolve("process.csv")));
    }

    /** A run of one plate of so many items: a minute, and 10 s for each. */
    private String measured(int items, Program quoin) {
        String[] order = IntStream.rangeClosed(0, items)
                .mapToObj(i -> i == 0 ? "Name" : "Ada " + i)
                .toArray(String[]::new);
        new JobFolder(folder).order(order);
        String run = "run-" + items;
        assertEquals(0, quoin.run("prepare", "job", "--out", run).status());
        assertEquals(
                0,
                quoin.run("done", run, "--plate", "1", "--took", "1:" + 10 * items)
                        .status());
        return run;
    }

    /** Results and problems go to two streams, which come in any order. */
    private static List<String> sorted(String said) {
        return Arrays.stream(said.split("\n")).sorted().toList();
    }
}
