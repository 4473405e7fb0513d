package dev.quoin.cli;

import dev.quoin.lettering.TextEngine;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;

/** The program: its commands, and how they end. Streams and folder are handed in, so that tests can run it. */
public final class Quoin {
    private static final String HELP = "help";
    private static final String VERSION = "quoin 1.0";

    private final PrintWriter out;
    private final PrintWriter err;
    private final Path workingFolder;
    private final boolean terminal;

    /**
     * Makes the program.
     *
     * @param out for results
     * @param err for problems and progress
     * @param workingFolder where relative paths of the command line start
     * @param terminal whether a person watches: colours and progress bars are shown
     */
    public Quoin(PrintWriter out, PrintWriter err, Path workingFolder, boolean terminal) {
        this.out = out;
        this.err = err;
        this.workingFolder = workingFolder;
        this.terminal = terminal;
    }

    /** Runs one command and returns the exit status. */
    public int run(String... args) {
        try {
            Map<String, Supplier<CommandLine>> commands = commands();
            boolean named = args.length > 0 && !args[0].equals(HELP) && commands.containsKey(args[0]);
            return named
                    ? alone(args[0], commands.get(args[0])).execute(Arrays.copyOfRange(args, 1, args.length))
                    : commandLine().execute(args);
        } catch (LinkageError | InternalError e) {
            err.println(TextEngine.missing(e).orElseThrow(() -> e));
            return ExitStatus.ACCESS.code();
        }
    }

    /** The program with all its commands. */
    CommandLine commandLine() {
        CommandLine root = new CommandLine(new Root());
        commands().values().forEach(command -> root.addSubcommand(command.get()));
        return withStreams(root);
    }

    /** One command without the others, since each takes a while to set up. */
    private CommandLine alone(String name, Supplier<CommandLine> command) {
        CommandLine alone = command.get();
        alone.setCommandName("quoin " + name);
        alone.getCommandSpec().version(VERSION);
        return withStreams(alone);
    }

    private Map<String, Supplier<CommandLine>> commands() {
        Console console = new Console(out, err, terminal);
        Map<String, Supplier<CommandLine>> commands = new LinkedHashMap<>();
        commands.put("prepare", () -> JobArguments.addTo(new CommandLine(new PrepareCommand(console, workingFolder))));
        commands.put("check", () -> JobArguments.addTo(new CommandLine(new CheckCommand(console, workingFolder))));
        commands.put("quote", () -> JobArguments.addTo(new CommandLine(new QuoteCommand(console, workingFolder))));
        commands.put("proof", () -> JobArguments.addTo(new CommandLine(new ProofCommand(console, workingFolder))));
        commands.put("jig", () -> JigCommand.of(console, workingFolder));
        commands.put("reprint", () -> new CommandLine(new ReprintCommand(console, workingFolder)));
        commands.put("done", () -> new CommandLine(new DoneCommand(console, workingFolder)));
        commands.put("status", () -> new CommandLine(new StatusCommand(console, workingFolder)));
        commands.put("extend", () -> new CommandLine(new ExtendCommand(console, workingFolder)));
        commands.put("verify", () -> new CommandLine(new VerifyCommand(console, workingFolder)));
        commands.put("grid", () -> new CommandLine(new GridCommand(console, workingFolder)));
        commands.put("calibrate", () -> new CommandLine(new CalibrateCommand(console, workingFolder)));
        commands.put(HELP, () -> new CommandLine(new CommandLine.HelpCommand()));
        return commands;
    }

    private CommandLine withStreams(CommandLine command) {
        Console console = new Console(out, err, terminal);
        command.setOut(out);
        command.setErr(err);
        command.setColorScheme(CommandLine.Help.defaultColorScheme(terminal ? Ansi.AUTO : Ansi.OFF));
        command.setUsageHelpAutoWidth(terminal);
        command.setExecutionExceptionHandler(new FailureMessages(console));
        command.setParameterExceptionHandler(new UsageMessages(console));
        return command;
    }

    /** The program without a command: it says what there is. */
    @Command(
            name = "quoin",
            mixinStandardHelpOptions = true,
            version = VERSION,
            synopsisSubcommandLabel = "COMMAND",
            description = {
                "Prepares batch jobs for a galvo laser: merges an order (CSV) into SVG templates, lays the pieces "
                        + "into a jig inside the lens's field, and writes numbered plate files with a run sheet and "
                        + "a time total.",
                ""
            },
            commandListHeading = "%nCommands:%n",
            footer = {
                "",
                "Try:  quoin prepare sample-orders/harbour-tags",
                "Exit status: 0 done; 1 errors in your files, nothing written; 2 wrong usage; 3 could not read or write."
            })
    static final class Root implements Runnable {
        @CommandLine.Spec
        private CommandLine.Model.CommandSpec spec;

        @Override
        public void run() {
            spec.commandLine().usage(spec.commandLine().getOut());
        }
    }
}
