package dev.quoin.plate;

import dev.quoin.geometry.Point;
import dev.quoin.shop.Machine;
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
    private final Machine machine;
    private final TimeModel model;
    private final StepTracer tracer;

    public PlateTimer(Machine machine) {
        this.machine = machine;
        this.model = new TimeModel(machine);
        this.tracer = new StepTracer(model);
    }

    /** The time of a plate, or of a reprint, that holds these items. */
    public PlateTime time(Recipe recipe, List<LoadedItem> items) {
        Double[] itemSeconds = new Double[items.size()];
        Arrays.fill(itemSeconds, 0.0);
        List<StepTime> steps = new ArrayList<>();
        Point beam = Point.ORIGIN;
        for (Step step : recipe.steps()) {
            Tally stepTally = Tally.ZERO;
            double saved = 0;
            for (int i = 0; i < items.size(); i++) {
                Point centre = items.get(i).placement().centre();
                for (Traced part : tracer.trace(step, items.get(i))) {
                    Tally tally =
                            model.jump(beam, from(centre, part.path().first())).plus(part.tally());
                    beam = from(centre, part.path().last());
                    itemSeconds[i] += tally.seconds();
                    stepTally = stepTally.plus(tally);
                    saved += part.saved();
                }
            }
            steps.add(new StepTime(step, stepTally, saved));
        }
        return new PlateTime(steps, List.of(itemSeconds), handling(items.size()));
    }

    private double handling(int items) {
        return items * machine.load() + machine.plate();
    }

    /** A part of the way is never empty, so it has ends. */
    private static Point from(Point centre, Optional<Point> end) {
        Point relative = end.orElseThrow();
        return new Point(centre.x() + relative.x(), centre.y() + relative.y());
    }
}
