package dev.quoin.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;

/**
 * One run of the program, without a terminal: how it ended and what it said.
 *
 * @param out the lines of standard output
 * @param err the lines of standard error
 */
record QuoinRun(int status, List<String> out, List<String> err) {
    static QuoinRun of(Path workingFolder, String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = new Quoin(new PrintWriter(out, true), new PrintWriter(err, true), workingFolder, false).run(args);
        return new QuoinRun(
                status, out.toString().lines().toList(), err.toString().lines().toList());
    }
}
