package dev.quoin.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** A program that does nothing but say so. */
final class Bare {
    private Bare() {}

    public static void main(String[] args) {
        System.out.println("nothing");
    }

    /** Runs it in a Java of its own, which looks for nothing but this class. */
    static Child run() throws IOException {
        String classes = Bare.class.getProtectionDomain().getCodeSource().getLocation().getPath();
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        return Child.run(
                Map.of(),
                List.of(
                        java.toString(),
                        "-Xshare:auto",
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        classes,
                        Bare.class.getName()));
    }
}
