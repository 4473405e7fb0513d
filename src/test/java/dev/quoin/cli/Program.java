package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The whole program, run in a folder, with what it said. Where the folder is a job's, its run is called {@code run}. */
record Program(Path workingFolder) {
    /** How a command ended. */
    record Ended(int status, String out, String err) {}

    Ended run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = new Quoin(new PrintWriter(out), new PrintWriter(err), workingFolder, false).run(args);
        return new Ended(status, out.toString(), err.toString());
    }

    /** Prepares the folder's job. */
    Ended prepare(String... options) {
        List<String> command = new ArrayList<>(List.of("prepare", ".", "--out", "run"));
        command.addAll(List.of(options));
        return run(command.toArray(String[]::new));
    }

    /** Prepares the folder's job, which is to end well and be proven. */
    Ended prepared(String... options) {
        Ended ended = prepare(options);
        assertEquals(0, ended.status(), ended.err());
        proven();
        return ended;
    }

    /** Proves the run, which is to be as it should. */
    Ended proven() {
        Ended verified = run("verify", "run");
        assertEquals(0, verified.status(), verified.err());
        return verified;
    }

    /** A table of the run. */
    CsvText table(String name) throws IOException {
        return CsvText.read(workingFolder.resolve("run").resolve(name));
    }
}
