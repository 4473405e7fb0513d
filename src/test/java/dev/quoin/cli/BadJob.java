package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * A way to spoil the small job, and what the program then says.
 *
 * @param lines on standard error, in order; DIR stands for the folder in which all this happens
 */
record BadJob(String name, Consumer<JobFolder> spoil, List<String> options, List<String> lines) {
    static BadJob of(String name, Consumer<JobFolder> spoil, String... lines) {
        return new BadJob(name, spoil, List.of(), List.of(lines));
    }

    static BadJob with(String name, String options, String... lines) {
        return new BadJob(name, job -> {}, List.of(options.split(" ")), List.of(lines));
    }

    /** Prepares the job, and compares all that was said and all that is left on the disk. */
    void check(Path folder, ExitStatus status) throws IOException {
        JobFolder job = new JobFolder(folder);
        spoil.accept(job);
        List<String> before = names(folder);
        QuoinRun run = job.prepare(options.toArray(String[]::new));
        List<String> said = new ArrayList<>(run.err().stream()
                .map(line -> line.replace(folder.toString(), "DIR"))
                .toList());
        if (status == ExitStatus.BAD_INPUT) {
            String last = said.remove(said.size() - 1);
            assertTrue(last.startsWith("nothing was written: "), last);
        }
        assertEquals(lines, said);
        assertEquals(status.code(), run.status());
        assertEquals(List.of(), run.out());
        assertEquals(before, names(folder), "something was left behind");
    }

    private static List<String> names(Path folder) throws IOException {
        return new ArrayList<>(JobFolder.contents(folder).keySet());
    }

    @Override
    public String toString() {
        return name;
    }
}
