package dev.quoin.cli;

import picocli.CommandLine.Option;

/** How much is said. */
final class OutputOptions {
    @Option(names = "--quiet", description = "Say nothing but problems.")
    private boolean quiet;

    @Option(names = "--json", description = "Say the result as JSON, for scripts.")
    private boolean json;

    boolean quiet() {
        return quiet;
    }

    boolean json() {
        return json;
    }
}
