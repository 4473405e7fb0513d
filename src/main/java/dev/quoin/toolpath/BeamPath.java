package dev.quoin.toolpath;

import dev.quoin.geometry.Path;
import dev.quoin.geometry.Point;
import dev.quoin.geometry.Polyline;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The way of the beam over one item in one step.
 *
 * @param passes the strokes in the order in which they are made; passes that repeat each other are one object. None is empty
 * @param asDrawn the same strokes in the order and directions of the file, for comparison; the same objects where nothing
 *     is ordered
 */
public record BeamPath(List<Strokes> passes, List<Strokes> asDrawn) {
    public static final BeamPath EMPTY = new BeamPath(List.of(), List.of());

    public BeamPath {
        passes = passes.stream().filter(pass -> !pass.isEmpty()).toList();
        asDrawn = asDrawn.stream().filter(pass -> !pass.isEmpty()).toList();
    }

    static BeamPath of(List<Pass> passes) {
        return new BeamPath(
                passes.stream().map(Pass::ordered).toList(),
                passes.stream().map(Pass::asDrawn).toList());
    }

    /** The way along lines that are drawn already: a path a pass, its pieces in their order and directions. */
    public static BeamPath along(List<Path> passes) {
        List<Strokes> strokes = passes.stream().map(BeamPath::strokes).toList();
        return new BeamPath(strokes, strokes);
    }

    /** The strokes as paths, one a pass, as {@link #along} takes them; passes that repeat each other are one object. */
    public List<Path> lines() {
        List<Path> lines = new ArrayList<>();
        for (int i = 0; i < passes.size(); i++) {
            boolean repeats = i > 0 && passes.get(i) == passes.get(i - 1);
            lines.add(repeats ? lines.get(i - 1) : passes.get(i).toPath());
        }
        return lines;
    }

    public boolean isEmpty() {
        return passes.isEmpty();
    }

    /** Where the first stroke starts, from the item's centre; empty if the step marks nothing. */
    public Optional<Point> first() {
        return isEmpty() ? Optional.empty() : Optional.of(passes.get(0).first());
    }

    /** Where the last stroke ends, from the item's centre; empty if the step marks nothing. */
    public Optional<Point> last() {
        return isEmpty()
                ? Optional.empty()
                : Optional.of(passes.get(passes.size() - 1).last());
    }

    /** The way if everything were marked in the order and directions of the file. */
    public BeamPath inFileOrder() {
        return new BeamPath(asDrawn, asDrawn);
    }

    private static Strokes strokes(Path pass) {
        Strokes.Builder strokes = new Strokes.Builder();
        for (Polyline line : pass.flatten(Tracer.TOLERANCE)) {
            Outline.of(line).stroke(0, false, strokes);
        }
        return strokes.build();
    }
}
