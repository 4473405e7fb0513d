package dev.quoin.plate;

import dev.quoin.geometry.Path;
import dev.quoin.geometry.Point;
import dev.quoin.shop.Machine;
import dev.quoin.shop.Method;
import dev.quoin.shop.Recipe;
import dev.quoin.shop.Step;
import dev.quoin.toolpath.Tally;
import dev.quoin.toolpath.TimeModel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Works out the time of a plate: a step runs over all items in slot order before the next step; the beam starts at the
 * field's centre (design, section 7).
 */
public final class PlateTimer {
    private final TimeModel model;
    private final StepTracer tracer;

    public PlateTimer(Machine machine) {
        this(machine, false);
    }

    /**
     * A timer for plates of either kind.
     *
     * @param hatched whether the marks of fill steps are the lines of a hatch, a path a pass, and not areas
     */
    public PlateTimer(Machine machine, boolean hatched) {
        this.model = new TimeModel(machine);
        this.tracer = new StepTracer(model, hatched);
    }

    /**
     * The time of a part of a plate, or of a reprint, that holds these items.
     *
     * @param handling the operator's work on it, s
     */
    public PlateTime time(Recipe recipe, List<LoadedItem> items, double handling) {
        return time(recipe, items, handling, (step, item, parts) -> {});
    }

    /** The time of a part, and its items with the lines of their hatches in place of the areas; all is traced once. */
    public TimedPlate hatch(Recipe recipe, List<LoadedItem> items, double handling) {
        List<LoadedItem> lined = new ArrayList<>(items);
        PlateTime time = time(recipe, items, handling, (step, item, parts) -> {
            if (step.method() == Method.FILL) {
                lined.set(item, lined.get(item).hatched(step, lines(parts)));
            }
        });
        return new TimedPlate(time, lined);
    }

    /** Sees each trace once it is timed; {@code item} is an index. */
    private interface TraceReader {
        void read(Step step, int item, List<Traced> parts);
    }

    private PlateTime time(Recipe recipe, List<LoadedItem> items, double handling, TraceReader reader) {
        Double[] itemSeconds = new Double[items.size()];
        Arrays.fill(itemSeconds, 0.0);
        List<StepTime> steps = new ArrayList<>();
        Point beam = Point.ORIGIN;
        for (Step step : recipe.steps()) {
            Tally stepTally = Tally.ZERO;
            double saved = 0;
            List<Integer> missed = new ArrayList<>();
            for (int i = 0; i < items.size(); i++) {
                Point centre = items.get(i).placement().centre();
                List<Traced> parts = tracer.trace(step, items.get(i));
                if (parts.isEmpty() && !items.get(i).marks(step).isEmpty()) {
                    missed.add(items.get(i).item());
                }
                reader.read(step, i, parts);
                for (Traced part : parts) {
                    Tally tally =
                            model.jump(beam, from(centre, part.path().first())).plus(part.tally());
                    beam = from(centre, part.path().last());
                    itemSeconds[i] += tally.seconds();
                    stepTally = stepTally.plus(tally);
                    saved += part.saved();
                }
            }
            steps.add(new StepTime(step, stepTally, saved, missed));
        }
        return new PlateTime(steps, List.of(itemSeconds), handling);
    }

    private static List<Path> lines(List<Traced> parts) {
        return parts.stream().flatMap(part -> part.path().lines().stream()).toList();
    }

    /** A part of the way is never empty, so it has ends. */
    private static Point from(Point centre, Optional<Point> end) {
        Point relative = end.orElseThrow();
        return new Point(centre.x() + relative.x(), centre.y() + relative.y());
    }
}
