package dev.quoin.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Where the program starts. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        // Else Java 22 to 24 tell of a console where none is, too.
        System.setProperty("jdk.console", "java.base");
        // Else picocli looks up Java's classes of times, databases and files at each start, to read values as such.
        System.setProperty("picocli.converters.excludes", "java.*");
        // Else the solver of calibrate tells on the output of machines that it does not know.
        System.setProperty("shut.up.ojAlgo", "true");
        boolean terminal = System.console() != null;
        int status = new Quoin(out, err, Path.of("").toAbsolutePath(), terminal).run(args);
        out.flush();
        err.flush();
        System.exit(status);
    }
}
