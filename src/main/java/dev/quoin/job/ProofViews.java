package dev.quoin.job;

import dev.quoin.art.Artwork;
import dev.quoin.art.Mark;
import dev.quoin.art.MarkedText;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Decimals;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import dev.quoin.order.Row;
import dev.quoin.paper.ProofHead;
import dev.quoin.paper.ProofInk;
import dev.quoin.paper.ProofItem;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import dev.quoin.problem.Severity;
import dev.quoin.shop.Blank;
import dev.quoin.shop.Method;
import dev.quoin.shop.Recipe;
import dev.quoin.shop.Step;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Puts a job's pieces as its proof shows them. */
final class ProofViews {
    private final LoadedJob job;
    private final List<Integer> columns;
    private final Map<Integer, List<String>> warnings = new HashMap<>();

    /**
     * Sets up.
     *
     * @param columns to show beside each piece; if none, those that are marked on it
     */
    ProofViews(LoadedJob job, List<Integer> columns, Problems problems) {
        this.job = job;
        this.columns = columns;
        for (Problem problem : problems.sorted()) {
            if (problem.severity() == Severity.WARNING
                    && problem.place().file().equals(job.order().file())) {
                warnings.computeIfAbsent(problem.place().line(), made -> new ArrayList<>())
                        .add(problem.message());
            }
        }
    }

    ProofHead head(int pieces, List<Integer> leftOut) {
        return new ProofHead(
                job.settings().name(),
                job.settings().text(JobKey.DATE),
                job.order().file(),
                pieces,
                leftOut.stream().map(row -> job.order().rows().get(row).line()).toList());
    }

    ProofItem item(Alike alike, Box page) {
        Row row = alike.first().row();
        Optional<Blank> blank = alike.plate().group().blank();
        return new ProofItem(
                alike.first().number(),
                alike.count(),
                row.line(),
                typed(row, alike.artwork()),
                blank.map(Blank::name).orElse(""),
                outline(alike, blank, page),
                blank.map(Blank::colour).orElse(""),
                ink(alike.artwork(), alike.plate().group().recipe()),
                flags(alike.artwork(), row),
                alike.back());
    }

    /**
     * The blank's outline: the shape of the pocket that holds it, at the blank's own size; the template's page where the
     * shop does not say how large the blank is.
     */
    private static Path outline(Alike alike, Optional<Blank> blank, Box page) {
        if (blank.filter(one -> one.width() > 0 && one.height() > 0).isEmpty()) {
            return Path.of(page);
        }
        Path front = alike.seat().placement().slot().pocket();
        Path pocket = alike.back() ? front.transform(Affine.scale(-1, 1)) : front;
        Box box = pocket.bounds();
        double x = blank.get().width() / box.width();
        double y = blank.get().height() / box.height();
        return pocket.transform(
                Affine.translate(-box.centre().x(), -box.centre().y()).then(new Affine(x, 0, 0, y, 0, 0)));
    }

    private List<ProofItem.Typed> typed(Row row, Artwork artwork) {
        List<Integer> shown =
                columns.isEmpty() ? artwork.uses().columns().stream().boxed().toList() : columns;
        return shown.stream()
                .map(column -> new ProofItem.Typed(
                        job.order().headers().get(column).strip(), row.cells().get(column)))
                .toList();
    }

    /** What each step puts on the piece; a process that several steps treat alike is shown once. */
    private static List<ProofInk> ink(Artwork artwork, Recipe recipe) {
        List<ProofInk> ink = new ArrayList<>();
        Set<String> shown = new HashSet<>();
        for (Step step : recipe.steps()) {
            if (shown.add(step.process() + " " + step.method())) {
                artwork.marks().stream()
                        .filter(mark -> mark.process().equals(step.process()))
                        .forEach(mark -> ink.add(ink(mark, step)));
            }
        }
        return ink;
    }

    private static ProofInk ink(Mark mark, Step step) {
        if (step.method() == Method.FILL) {
            return new ProofInk(
                    ProofInk.Kind.AREA, mark.area().outline(), mark.area().rule());
        }
        ProofInk.Kind kind = step.cuts() ? ProofInk.Kind.CUT : ProofInk.Kind.LINE;
        return new ProofInk(kind, mark.path(), FillRule.NON_ZERO);
    }

    private List<String> flags(Artwork artwork, Row row) {
        List<String> flags = new ArrayList<>();
        for (MarkedText text : artwork.texts()) {
            String lines = text.text().replace("\n", " / ");
            if (text.wrapped()) {
                flags.add("Broken into " + text.text().lines().count() + " lines: " + lines);
            }
            if (text.squeeze() < 1) {
                flags.add("Letters narrowed to " + Decimals.text(100 * text.squeeze(), 0) + " % of their width: "
                        + lines);
            }
        }
        artwork.codes().forEach(code -> flags.add("The " + code.kind().word() + " code reads: " + code.encoded()));
        warnings.getOrDefault(row.line(), List.of()).forEach(message -> flags.add("Please check. " + message));
        return flags;
    }
}
