package dev.quoin.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The program as it is handed out, and where to work with it.
 *
 * @param launcher its file
 * @param work a folder of ours, for jobs and their runs
 */
record Distribution(Path launcher, Path work) {
    /** A small heap must do for any number of items. */
    static final Map<String, String> SMALL_HEAP = Map.of("QUOIN_JAVA_OPTS", "-Xmx256m");

    /** The invented job of so many items, written if it is not there yet. */
    InventedJob job(int items) throws IOException {
        Path folder = work.resolve("items-" + items);
        return Files.exists(folder) ? new InventedJob(folder) : InventedJob.of(items, folder);
    }

    /** Where the run of a job stands. */
    Path run(InventedJob job) {
        return work.resolve("run-of-" + job.folder().getFileName());
    }

    /** A command line of the program. */
    List<String> command(String name, Path argument, String... more) {
        List<String> command = new ArrayList<>(List.of(launcher.toString(), name, argument.toString(), "--quiet"));
        command.addAll(List.of(more));
        return command;
    }

    /** Prepares a job in place of its last run. */
    Child prepare(Map<String, String> environment, InventedJob job, String... more) throws IOException {
        delete(run(job));
        List<String> command = command("prepare", job.folder(), more);
        command.addAll(List.of("--out", run(job).toString()));
        return Child.run(environment, command);
    }

    /** Deletes a file, or a folder and all in it, if it is there. */
    static void delete(Path root) throws IOException {
        if (Files.exists(root)) {
            List<Path> all;
            try (Stream<Path> found = Files.walk(root)) {
                all = new ArrayList<>(found.toList());
            }
            for (int i = all.size() - 1; i >= 0; i--) {
                Files.delete(all.get(i));
            }
        }
    }
}
