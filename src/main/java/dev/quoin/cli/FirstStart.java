package dev.quoin.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Runs the usual commands on small jobs, so that Java can archive the classes that they need: what is not in the archive is
 * linked anew at every start. The launcher runs it once wherever there is no archive yet; nothing is printed.
 */
public final class FirstStart {
    private FirstStart() {}

    /**
     * Prepares each job and reprints an item of it.
     *
     * @param args the folder of the jobs' folders, and a folder for the runs, which must not exist
     * @throws IOException if the folder cannot be read
     */
    public static void main(String[] args) throws IOException {
        Quoin quoin = new Quoin(
                new PrintWriter(Writer.nullWriter()),
                new PrintWriter(Writer.nullWriter()),
                Path.of("").toAbsolutePath(),
                false);
        try (DirectoryStream<Path> jobs = Files.newDirectoryStream(Path.of(args[0]))) {
            for (Path job : jobs) {
                String run = Path.of(args[1]).resolve(job.getFileName()).toString();
                quoin.run("prepare", job.toString(), "--out", run);
                quoin.run("check", job.toString());
                quoin.run("reprint", run, "--item", "1");
                quoin.run("done", run, "--plate", "1");
                quoin.run("status", run);
            }
        }
    }
}
