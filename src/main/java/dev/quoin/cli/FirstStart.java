package dev.quoin.cli;

import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;

/**
 * Runs the usual commands on a small job, so that Java can archive the classes that they need. The launcher runs it once
 * wherever there is no archive yet; nothing is printed.
 */
public final class FirstStart {
    private FirstStart() {}

    /**
     * Prepares a job and reprints an item of it.
     *
     * @param args the job's folder, and a folder for the run, which must not exist
     */
    public static void main(String[] args) {
        Quoin quoin = new Quoin(
                new PrintWriter(Writer.nullWriter()),
                new PrintWriter(Writer.nullWriter()),
                Path.of("").toAbsolutePath(),
                false);
        quoin.run("prepare", args[0], "--out", args[1]);
        quoin.run("check", args[0]);
        quoin.run("reprint", args[1], "--item", "1");
        quoin.run("done", args[1], "--plate", "1");
        quoin.run("status", args[1]);
    }
}
