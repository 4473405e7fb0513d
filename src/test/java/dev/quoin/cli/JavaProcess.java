package dev.quoin.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The program in a process of its own, as a user starts it. */
final class JavaProcess {
    private JavaProcess() {}

    /** Starts it; what it says goes to {@code said.txt} in the folder. */
    static Process start(Path workingFolder, List<String> javaOptions, String... args) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true",
                "-cp",
                System.getProperty("java.class.path")));
        command.addAll(javaOptions);
        command.add(Main.class.getName());
        command.addAll(List.of(args));
        return new ProcessBuilder(command)
                .directory(workingFolder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(workingFolder.resolve("said.txt").toFile())
                .start();
    }
}
