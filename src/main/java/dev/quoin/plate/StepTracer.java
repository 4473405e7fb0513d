package dev.quoin.plate;

import dev.quoin.art.Mark;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Box;
import dev.quoin.shop.Method;
import dev.quoin.shop.Step;
import dev.quoin.toolpath.BeamPath;
import dev.quoin.toolpath.TimeModel;
import dev.quoin.toolpath.Tracer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Traces what a step does on an item. What a template marks on every item is traced once for each turn of the slots and
 * comes first; then what is the item's own, where the step fills and the two lie apart. Where they touch, or where paths
 * are followed (an inner cut must come before the outer one around it), all is traced together. Safe for use by several
 * threads.
 */
final class StepTracer {
    /** What attributes with placeholders draw is constant for the rows of the same values, of which there may be many. */
    private static final int MOST_REMEMBERED = 1_000;

    private final Tracer tracer = new Tracer();
    private final TimeModel model;
    private final boolean hatched;
    private final Map<Key, Shared> known = new ConcurrentHashMap<>();

    /**
     * A tracer for plates of either kind.
     *
     * @param hatched whether the marks of fill steps are the lines of a hatch, a path a pass, and not areas
     */
    StepTracer(TimeModel model, boolean hatched) {
        this.model = model;
        this.hatched = hatched;
    }

    /** The parts of the item's way, in order; none is empty. */
    List<Traced> trace(Step step, LoadedItem item) {
        List<Mark> constant = new ArrayList<>();
        List<Mark> own = new ArrayList<>();
        for (Mark mark : item.marks(step)) {
            (mark.constant() ? constant : own).add(mark);
        }
        Affine turn = item.placement().turn();
        if (constant.isEmpty()) {
            return parts(trace(step, turned(own, turn)));
        }
        Shared shared = shared(step, turn, constant);
        if (own.isEmpty()) {
            return parts(shared.traced());
        }
        List<Mark> turnedOwn = turned(own, turn);
        if (step.method() == Method.FILL && shared.liesApartFrom(turnedOwn)) {
            return parts(shared.traced(), trace(step, turnedOwn));
        }
        return parts(trace(step, turned(item.marks(step), turn)));
    }

    private Shared shared(Step step, Affine turn, List<Mark> constant) {
        if (known.size() >= MOST_REMEMBERED) {
            known.clear();
        }
        return known.computeIfAbsent(Key.of(step, turn, constant), key -> share(step, turned(constant, turn)));
    }

    private Shared share(Step step, List<Mark> turned) {
        List<Box> boxes =
                turned.stream().map(mark -> mark.area().outline().bounds()).toList();
        return new Shared(boxes, trace(step, turned));
    }

    private Traced trace(Step step, List<Mark> turned) {
        BeamPath path = hatched && step.method() == Method.FILL
                ? BeamPath.along(turned.stream().map(Mark::path).toList())
                : tracer.trace(step, turned);
        return new Traced(path, model.measure(path, step), model.saved(path));
    }

    private static List<Mark> turned(List<Mark> marks, Affine turn) {
        return marks.stream().map(mark -> mark.transform(turn)).toList();
    }

    private static List<Traced> parts(Traced... parts) {
        List<Traced> marked = new ArrayList<>();
        for (Traced part : parts) {
            if (!part.path().isEmpty()) {
                marked.add(part);
            }
        }
        return marked;
    }

    /** Constant marks, traced. */
    private record Shared(List<Box> boxes, Traced traced) {
        boolean liesApartFrom(List<Mark> own) {
            return own.stream()
                    .map(mark -> mark.area().outline().bounds())
                    .noneMatch(box -> boxes.stream().anyMatch(box::meets));
        }
    }

    /** Constant marks are one object for all items, so they are told apart by identity: comparing outlines takes long. */
    private record Key(Step step, Affine turn, List<Identity> marks) {
        static Key of(Step step, Affine turn, List<Mark> marks) {
            return new Key(step, turn, marks.stream().map(Identity::new).toList());
        }
    }

    private record Identity(Mark mark) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Identity identity && identity.mark == mark;
        }

        @Override
        public int hashCode() {
            return System.identityHashCode(mark);
        }
    }
}
