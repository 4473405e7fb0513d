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
import picocli.CommandLine;

/** {@code quoin jig}. */
final class JigCommand extends Command {
    private static final JobKey[] KEYS = {JobKey.SHOP, JobKey.JIG_CENTRE, JobKey.JIG_SHIFT, JobKey.DATUM};

    private final Option<Integer> rows =
            Option.integer("--rows", "N", "Rows, named A, B, C from the top.").required();
    private final Option<Integer> columns =
            Option.integer("--columns", "N", "Columns, 1, 2, 3 from the left.").required();
    private final Option<Double> pitchX =
            Option.decimal("--pitch-x", "MM", "From column to column.").required();
    private final Option<Double> pitchY =
            Option.decimal("--pitch-y", "MM", "From row to row.").required();
    private final Option<String> pocket = Option.text(
                    "--pocket",
                    "SHAPE",
                    "The piece to hold: circle:32, rect:50x25, or rect:50x25:3 with rounded corners; mm.")
            .required();
    private final Option<String> outline = Option.text("--outline", "JIG", "Write the outlines of this jig.");
    private final Option<Boolean> arrow = Option.flag("--arrow", "Write an arrow and the letter F.");

    // These three are read like the options of a job; they stand here to be described for a jig.
    private final Option<String> out = Option.text(
                    "--out", "FILE", "The file to write; for a jig its name, to which .svg and .csv are added.")
            .required();
    private final Option<Boolean> replace = Option.flag("--replace", "Replace files that stand there.");
    private final Option<String> lens = Option.text("--lens", "NAME", "The lens whose field is drawn.");

    private final Option<String> pins = Option.text("--pins", "X,Y,D;...", "Holes for pins: mm from the jig's centre.");
    private final Option<Double> clearance = Option.decimal(
            "--clearance", "MM", "How much a pocket is larger than its piece, on each side; if not given, 0.2.");
    private final Option<Double> margin =
            Option.decimal("--margin", "MM", "From the outer pockets to the plate's edge; if not given, 5.");

    JigCommand(Console console, Path workingFolder) {
        super(console, workingFolder);
    }

    @Override
    Usage usage() {
        return new Usage(
                        this,
                        "Makes a jig from numbers, as a drawing that can itself be cut and a table of its slots; or an alignment "
                                + "file, the outlines of a jig to be shown with the pointing beam; or an arrow, to find out how "
                                + "the field lies.")
                .takesOneOf(List.of(outline, arrow), List.of(rows, columns, pitchX, pitchY, pocket))
                .takes(out, replace, lens, pins, clearance, margin)
                .takes(output.options())
                .notes(
                        "The arrow: mark it on a spare piece, look at it from where the operator stands, and set in machine.csv",
                        "  field_mirror    none if the letter F reads as it should, y if it is mirrored",
                        "  field_turn_deg  where it points: right 0, away from you 90, left 180,",
                        "                  towards you 270")
                .examples(
                        "quoin jig --rows 3 --columns 4 --pitch-x 40 --pitch-y 42 \\",
                        "    --pocket circle:32 --out jigs/round-32",
                        "quoin jig --outline jigs/round-32.svg --lens long-200 --out align.svg",
                        "quoin jig --arrow --lens long-200 --out arrow.svg");
    }

    /** With the options that it shares with jobs. */
    @Override
    CommandLine commandLine() {
        return JobArguments.addTo(super.commandLine(), KEYS);
    }

    @Override
    public Integer call() throws IOException {
        Problems problems = new Problems();
        JobSettings settings = new JobSettingsReader(workingFolder)
                .without("jig", JobArguments.given(out.commandLine().getParseResult()));
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
        if (arrow.orElse(false)) {
            return tools.arrow();
        }
        if (outline.given().isPresent()) {
            return tools.outline(path(outline.value()));
        }
        if (rows.given().isEmpty()) {
            throw arrow.wrong("Nothing is asked for: give --rows and what goes with it, --outline or --arrow");
        }
        return make(tools, problems);
    }

    private List<Path> make(JigTools tools, Problems problems) throws IOException {
        double gap = clearance.orElse(0.2);
        double edge = margin.orElse(5.0);
        if (!(edge >= 0 && edge <= 1000 && gap >= 0 && gap <= 10 && isPitch(pitchX) && isPitch(pitchY))) {
            throw rows.wrong("Pitches and margin go from 0 to 1000 mm, the clearance from 0 to 10 mm");
        }
        Optional<PocketShape> piece = JigNumbers.pocket(pocket.value(), problems);
        List<Pin> holes = JigNumbers.pins(pins.orElse(""), problems);
        if (problems.hasErrors() || piece.isEmpty()) {
            return List.of();
        }
        return tools.make(new JigDesign(
                rows.value(),
                columns.value(),
                pitchX.value(),
                pitchY.value(),
                piece.get().grown(gap),
                edge,
                holes));
    }

    private static boolean isPitch(Option<Double> pitch) {
        return pitch.value() >= 0 && pitch.value() <= 1000;
    }
}
