package dev.quoin.cli;

/** How much is said. */
final class OutputOptions {
    private final Option<Boolean> quiet = Option.flag("--quiet", "Say nothing but problems.");
    private final Option<Boolean> json = Option.flag("--json", "Say the result as JSON, for scripts.");

    boolean quiet() {
        return quiet.orElse(false);
    }

    boolean json() {
        return json.orElse(false);
    }

    Option<?>[] options() {
        return new Option<?>[] {quiet, json};
    }
}
