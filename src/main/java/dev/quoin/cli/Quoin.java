package dev.quoin.cli;

import dev.quoin.lettering.TextEngine;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.BiFunction;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/** The program: its commands, and how they end. Streams and folder are handed in, so that tests can run it. */
public final class Quoin {
    /** The commands by name, in the order in which the help lists them. */
    private static final Map<String, BiFunction<Console, Path, Command>> COMMANDS = commands();

    private static final String VERSION = "quoin 1.0";

    private final PrintWriter out;
    private final PrintWriter err;
    private final Console console;
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
        this.console = new Console(out, err, terminal);
        this.workingFolder = workingFolder;
        this.terminal = terminal;
    }

    /** Runs one command and returns the exit status. */
    public int run(String... args) {
        try {
            BiFunction<Console, Path, Command> command = args.length > 0 ? COMMANDS.get(args[0]) : null;
            return command == null
                    ? commandLine().execute(args)
                    : alone(args[0], command).execute(Arrays.copyOfRange(args, 1, args.length));
        } catch (LinkageError | InternalError e) {
            err.println(TextEngine.missing(e).orElseThrow(() -> e));
            return ExitStatus.ACCESS.code();
        }
    }

    /** The program with all its commands. */
    CommandLine commandLine() {
        CommandLine root = new Root().commandLine();
        COMMANDS.forEach((name, command) ->
                root.addSubcommand(name, command.apply(console, workingFolder).commandLine()));
        root.addSubcommand(new CommandLine.HelpCommand());
        return withStreams(root);
    }

    /** One command without the others, since each takes a while to set up. */
    private CommandLine alone(String name, BiFunction<Console, Path, Command> command) {
        Command made = command.apply(console, workingFolder);
        made.begin();
        CommandLine alone = made.commandLine();
        alone.setCommandName("quoin " + name);
        alone.getCommandSpec().version(VERSION);
        return withStreams(alone);
    }

    private static Map<String, BiFunction<Console, Path, Command>> commands() {
        Map<String, BiFunction<Console, Path, Command>> commands = new LinkedHashMap<>();
        commands.put("prepare", PrepareCommand::new);
        commands.put("check", CheckCommand::new);
        commands.put("quote", QuoteCommand::new);
        commands.put("proof", ProofCommand::new);
        commands.put("jig", JigCommand::new);
        commands.put("reprint", ReprintCommand::new);
        commands.put("done", DoneCommand::new);
        commands.put("status", StatusCommand::new);
        commands.put("extend", ExtendCommand::new);
        commands.put("verify", VerifyCommand::new);
        commands.put("grid", GridCommand::new);
        commands.put("calibrate", CalibrateCommand::new);
        return commands;
    }

    private CommandLine withStreams(CommandLine command) {
        command.setOut(out);
        command.setErr(err);
        command.setColorScheme(CommandLine.Help.defaultColorScheme(terminal ? Ansi.AUTO : Ansi.OFF));
        command.setUsageHelpAutoWidth(terminal);
        command.setExecutionExceptionHandler(new FailureMessages(console));
        command.setParameterExceptionHandler(new UsageMessages(console));
        return command;
    }

    /** The program without a command: it says what there is. */
    private static final class Root implements Callable<Integer> {
        private final CommandLine commandLine = new Usage(
                        this,
                        "Prepares batch jobs for a galvo laser: merges an order (CSV) into SVG templates, lays the pieces into a "
                                + "jig inside the lens's field, and writes numbered plate files with a run sheet and a time total.")
                .notes(
                        "Try:  quoin prepare sample-orders/harbour-tags",
                        "Exit status: 0 done; 1 errors in your files, nothing written; 2 wrong usage; 3 could not read or write.")
                .commandLine();

        CommandLine commandLine() {
            commandLine.getCommandSpec().name("quoin").version(VERSION);
            commandLine
                    .getCommandSpec()
                    .usageMessage()
                    .synopsisSubcommandLabel("COMMAND")
                    .commandListHeading("%nCommands:%n");
            return commandLine;
        }

        @Override
        public Integer call() {
            commandLine.usage(commandLine.getOut());
            return ExitStatus.DONE.code();
        }
    }
}
