package dev.quoin.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.openjdk.jmh.runner.NoBenchmarksException;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs those benchmarks in whose names its argument is found, a regular expression: of the whole program, and of JMH. */
public final class Benchmarks {
    private Benchmarks() {}

    public static void main(String[] args) throws IOException, RunnerException {
        Pattern wanted = Pattern.compile(args[0]);
        List<WholeProgram> whole = Stream.of(
                        new ColdStarts(),
                        new Watching(),
                        new TenThousandItems(),
                        new TwoThreads(),
                        new LargeOrders(Integer.getInteger("quoin.items")))
                .filter(one -> wanted.matcher(name(one)).find())
                .toList();
        if (!whole.isEmpty()) {
            measure(whole);
        }
        try {
            new Runner(new OptionsBuilder().include(args[0]).build()).run();
        } catch (NoBenchmarksException e) {
            if (whole.isEmpty()) {
                throw e;
            }
        }
    }

    /** All of them have a first name in common. */
    private static String name(WholeProgram one) {
        return "WholeProgram." + one.getClass().getSimpleName();
    }

    private static void measure(List<WholeProgram> whole) throws IOException {
        Path work = Path.of(System.getProperty("quoin.work"));
        Path launcher = Path.of(System.getProperty("quoin.distribution"), "bin", "quoin");
        Distribution.delete(work);
        Files.createDirectories(work);
        try {
            Child.run(Map.of(), List.of(launcher.toString(), "--version")); // Makes the class archive.
            for (WholeProgram one : whole) {
                System.out.println(name(one));
                one.measure(new Distribution(launcher, work));
            }
        } finally {
            Distribution.delete(work);
        }
    }
}
