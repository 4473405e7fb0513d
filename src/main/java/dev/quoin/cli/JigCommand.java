package dev.quoin.cli;

import dev.quoin.job.JigNumbers;
import dev.quoin.job.JigTools;
import dev.quoin.job.JobKey;
import dev.quoin.job.JobSettings;
import dev.quoin.job.JobSettingsReader;
import dev.quoin.problem.Problems;
import dev.quoin.shop.JigDesign;
import dev.quoin.shop.Pin;
import dev.quoin.shop.PocketShape;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code quoin jig}. */
@Command(
        name = "jig",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Makes a jig from numbers, as a drawing that can itself be cut and a table of its slots; or an alignment "
                    + "file, the outlines of a jig to be shown with the pointing beam; or an arrow, to find out how the "
                    + "field lies.",
            ""
        },
        footer = {
            "",
            "The arrow: mark it on a spare piece, look at it from where the operator stands, and set in machine.csv",
            "  field_mirror    none if the letter F reads as it should, y if it is mirrored",
            "  field_turn_deg  where it points: right 0, away from you 90, left 180,",
            "                  towards you 270",
            "",
            "Examples:",
            "  quoin jig --rows 3 --columns 4 --pitch-x 40 --pitch-y 42 \\",
            "      --pocket circle:32 --out jigs/round-32",
            "  quoin jig --outline jigs/round-32.svg --lens long-200 --out align.svg",
            "  quoin jig --arrow --lens long-200 --out arrow.svg"
        })
final class JigCommand implements Callable<Integer> {
    private static final JobKey[] KEYS = {JobKey.SHOP, JobKey.JIG_CENTRE, JobKey.JIG_SHIFT, JobKey.DATUM};

    private final Console console;
    private final Path workingFolder;

    @Spec
    private CommandSpec spec;

    @ArgGroup(exclusive = true, multiplicity = "1")
    private Task task;

    // These three are read like the options of a job; they stand here to be described for a jig.
    @Option(
            names = "--out",
            required = true,
            paramLabel = "FILE",
            description = "The file to write; for a jig its name, to which .svg and .csv are added.")
    private String out;

    @Option(names = "--replace", description = "Replace files that stand there.")
    private boolean replace;

    @Option(names = "--lens", paramLabel = "NAME", description = "The lens whose field is drawn.")
    private String lens;

    @Option(names = "--pins", paramLabel = "X,Y,D;...", description = "Holes for pins: mm from the jig's centre.")
    private String pins = "";

    @Option(
            names = "--clearance",
            paramLabel = "MM",
            description = "How much a pocket is larger than its piece, on each side; if not given, 0.2.")
    private double clearance = 0.2;

    @Option(
            names = "--margin",
            paramLabel = "MM",
            description = "From the outer pockets to the plate's edge; if not given, 5.")
    private double margin = 5;

    @Mixin
    private OutputOptions output = new OutputOptions();

    /** What is to be made. */
    static final class Task {
        @ArgGroup(exclusive = false)
        private Rows grid;

        @Option(names = "--outline", paramLabel = "JIG", description = "Write the outlines of this jig.")
        private String outline;

        @Option(names = "--arrow", description = "Write an arrow and the letter F.")
        private boolean arrow;
    }

    /** The numbers that make a jig. */
    static final class Rows {
        @Option(names = "--rows", required = true, paramLabel = "N", description = "Rows, named A, B, C from the top.")
        private int rows;

        @Option(names = "--columns", required = true, paramLabel = "N", description = "Columns, 1, 2, 3 from the left.")
        private int columns;

        @Option(names = "--pitch-x", required = true, paramLabel = "MM", description = "From column to column.")
        private double pitchX;

        @Option(names = "--pitch-y", required = true, paramLabel = "MM", description = "From row to row.")
        private double pitchY;

        @Option(
                names = "--pocket",
                required = true,
                paramLabel = "SHAPE",
                description = "The piece to hold: circle:32, rect:50x25, or rect:50x25:3 with rounded corners; mm.")
        private String pocket;
    }

    JigCommand(Console console, Path workingFolder) {
        this.console = console;
        this.workingFolder = workingFolder;
    }

    /** The command with the options that it shares with jobs. */
    static CommandLine of(Console console, Path workingFolder) {
        return JobArguments.addTo(new CommandLine(new JigCommand(console, workingFolder)), KEYS);
    }

    @Override
    public Integer call() throws IOException {
        Problems problems = new Problems();
        JobSettings settings = new JobSettingsReader(workingFolder)
                .without("jig", JobArguments.given(spec.commandLine().getParseResult()));
        List<Path> written = write(new JigTools(settings, problems), problems);
        console.complain(problems.sorted());
        if (output.json()) {
            console.say(SummaryText.files(written, workingFolder));
        } else if (!output.quiet()) {
            written.forEach(file -> console.say(SummaryText.relative(file, workingFolder)));
        }
        return (problems.hasErrors() ? ExitStatus.BAD_INPUT : ExitStatus.DONE).code();
    }

    private List<Path> write(JigTools tools, Problems problems) throws IOException {
        if (task.arrow) {
            return tools.arrow();
        }
        if (task.outline != null) {
            return tools.outline(workingFolder.resolve(task.outline).normalize());
        }
        if (task.grid == null) {
            throw new ParameterException(
                    spec.commandLine(),
                    "Nothing is asked for: give --rows and what goes with it, --outline or --arrow");
        }
        if (!(margin >= 0 && margin <= 1000 && clearance >= 0 && clearance <= 10 && isPitch(task.grid.pitchX))
                || !isPitch(task.grid.pitchY)) {
            throw new ParameterException(
                    spec.commandLine(), "Pitches and margin go from 0 to 1000 mm, the clearance from 0 to 10 mm");
        }
        Optional<PocketShape> pocket = JigNumbers.pocket(task.grid.pocket, problems);
        List<Pin> holes = JigNumbers.pins(pins, problems);
        if (problems.hasErrors() || pocket.isEmpty()) {
            return List.of();
        }
        return tools.make(new JigDesign(
                task.grid.rows,
                task.grid.columns,
                task.grid.pitchX,
                task.grid.pitchY,
                pocket.get().grown(clearance),
                margin,
                holes));
    }

    private static boolean isPitch(double mm) {
        return mm >= 0 && mm <= 1000;
    }
}
