package dev.quoin.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;

/** The whole program, run in a folder, with what it said. */
record Program(Path workingFolder) {
    /** How a command ended. */
    record Ended(int status, String out, String err) {}

    Ended run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = new Quoin(new PrintWriter(out), new PrintWriter(err), workingFolder, false).run(args);
        return new Ended(status, out.toString(), err.toString());
    }
}
