package dev.quoin.bench;

import java.io.IOException;
import java.nio.file.Path;
import org.openjdk.jmh.Main;

/** Runs those benchmarks whose names match its argument: the whole program, and those of JMH. */
public final class Benchmarks {
    private static final String WHOLE = "WholeProgram";

    private Benchmarks() {}

    public static void main(String[] args) throws IOException {
        if (WHOLE.matches(args[0])) {
            WholeProgram.run(
                    Path.of(System.getProperty("quoin.distribution")),
                    Path.of(System.getProperty("quoin.work")),
                    Integer.getInteger("quoin.items"));
        }
        if (!args[0].equals(WHOLE)) {
            Main.main(args);
        }
    }
}
