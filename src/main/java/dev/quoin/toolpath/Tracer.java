package dev.quoin.toolpath;

import dev.quoin.art.Mark;
import dev.quoin.shop.EdgePass;
import dev.quoin.shop.Method;
import dev.quoin.shop.Pattern;
import dev.quoin.shop.Step;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Turns the marks of one item into the strokes of one step. The marks stand as they lie in the field, turned, but around
 * the item's centre: so the same artwork gives the same strokes in every slot of the same rotation. The marks of a fill
 * step are covered together, so that where two overlap the beam passes once. Keeps nothing from one call to the next, and
 * may be used by several threads.
 */
public final class Tracer {
    /** How far lines may leave the curves that they stand for, mm. */
    public static final double TOLERANCE = 0.005;

    private final double tolerance;

    public Tracer() {
        this(TOLERANCE);
    }

    /**
     * @param tolerance how far lines may leave curves, mm
     */
    public Tracer(double tolerance) {
        this.tolerance = tolerance;
    }

    /** The way of the beam over the marks of the step's process. */
    public BeamPath trace(Step step, List<Mark> marks) {
        List<Mark> treated = marks.stream()
                .filter(mark -> mark.process().equals(step.process()))
                .toList();
        if (treated.isEmpty()) {
            return BeamPath.EMPTY;
        }
        return step.method() == Method.FOLLOW ? follow(step, treated) : fill(step, treated);
    }

    private BeamPath follow(Step step, List<Mark> marks) {
        List<Piece> pieces = new ArrayList<>();
        for (Mark mark : marks) {
            mark.path().flatten(tolerance).forEach(line -> pieces.add(Outline.of(line)));
        }
        Pass pass = Pass.through(pieces, step.cuts());
        return BeamPath.of(Collections.nCopies(step.passes(), pass));
    }

    private BeamPath fill(Step step, List<Mark> marks) {
        List<Cover> covers = covers(step, marks);
        List<Pass> passes = new ArrayList<>();
        if (step.edge() == EdgePass.FIRST) {
            passes.add(edge(covers));
        }
        Map<Double, Pass> byAngle = new HashMap<>();
        for (int i = 0; i < step.passes(); i++) {
            double angle = (step.angle() + i * step.turn()) % 360;
            passes.add(byAngle.computeIfAbsent(angle, a -> hatch(step, a, covers)));
        }
        if (step.edge() == EdgePass.LAST) {
            passes.add(edge(covers));
        }
        return BeamPath.of(passes);
    }

    private List<Cover> covers(Step step, List<Mark> marks) {
        List<Cover> covers = new ArrayList<>();
        for (Mark mark : marks) {
            covers.add(new Cover(
                    mark.area().outline().flatten(tolerance), mark.area().rule()));
        }
        boolean plain = step.inset() == 0 && step.edge() == EdgePass.NONE;
        return plain ? covers : List.of(Edge.inside(covers, step.inset(), tolerance));
    }

    private static Pass edge(List<Cover> covers) {
        List<Piece> pieces = new ArrayList<>();
        covers.forEach(cover -> cover.outline().forEach(line -> pieces.add(Outline.of(line))));
        return Pass.through(pieces, false);
    }

    private static Pass hatch(Step step, double angle, List<Cover> covers) {
        Hatch hatch = new Hatch(covers, Grid.at(angle, step.spacing()));
        return step.pattern() == Pattern.REGIONS
                ? Pass.through(Regions.of(Spans.of(hatch)), false)
                : Pass.across(hatch);
    }
}
