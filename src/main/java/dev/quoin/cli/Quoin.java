package dev.quoin.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;

/** The program: its commands, and how they end. Streams and folder are handed in, so that tests can run it. */
public final class Quoin {
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
        return commandLine().execute(args);
    }

    CommandLine commandLine() {
        Console console = new Console(out, err, terminal);
        CommandLine root = new CommandLine(new Root());
        root.addSubcommand(JobArguments.addTo(new CommandLine(new PrepareCommand(console, workingFolder))));
        root.addSubcommand(JobArguments.addTo(new CommandLine(new CheckCommand(console, workingFolder))));
        root.addSubcommand(JobArguments.addTo(new CommandLine(new QuoteCommand(console, workingFolder))));
        root.addSubcommand(JobArguments.addTo(new CommandLine(new ProofCommand(console, workingFolder))));
        root.addSubcommand(JigCommand.of(console, workingFolder));
        root.addSubcommand(new CommandLine(new ReprintCommand(console, workingFolder)));
        root.addSubcommand(new CommandLine(new DoneCommand(console, workingFolder)));
        root.addSubcommand(new CommandLine(new StatusCommand(console, workingFolder)));
        root.addSubcommand(new CommandLine(new ExtendCommand(console, workingFolder)));
        root.addSubcommand(new CommandLine(new VerifyCommand(console, workingFolder)));
        root.addSubcommand(new CommandLine(new GridCommand(console, workingFolder)));
        root.addSubcommand(new CommandLine(new CalibrateCommand(console, workingFolder)));
        root.addSubcommand(new CommandLine.HelpCommand());
        root.setInterpolateVariables(false);
        root.setOut(out);
        root.setErr(err);
        root.setColorScheme(CommandLine.Help.defaultColorScheme(terminal ? Ansi.AUTO : Ansi.OFF));
        root.setUsageHelpAutoWidth(terminal);
        root.setExecutionExceptionHandler(new FailureMessages(console));
        root.setParameterExceptionHandler(new UsageMessages(console));
        return root;
    }

    /** The program without a command: it says what there is. */
    @Command(
            name = "quoin",
            mixinStandardHelpOptions = true,
            version = "quoin 1.0",
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
