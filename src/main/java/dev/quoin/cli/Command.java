package dev.quoin.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine;

/** A command of the program: how it is called, and what it does. */
abstract class Command implements Callable<Integer> {
    final Console console;
    final Path workingFolder;
    final OutputOptions output = new OutputOptions();

    Command(Console console, Path workingFolder) {
        this.console = console;
        this.workingFolder = workingFolder;
    }

    /** How it is called. */
    abstract Usage usage();

    /** Begins what it will need in any case, before the command line is read. */
    void begin() {
        // Most need little.
    }

    /** A command line that calls it. */
    CommandLine commandLine() {
        return usage().commandLine();
    }

    /** The file or folder that is meant by what was given. */
    final Path path(String given) {
        return workingFolder.resolve(given).normalize();
    }
}
