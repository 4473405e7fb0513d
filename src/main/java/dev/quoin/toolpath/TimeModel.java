package dev.quoin.toolpath;

import dev.quoin.geometry.Point;
import dev.quoin.shop.Machine;
import dev.quoin.shop.Step;
import java.util.List;

/**
 * The time that the beam takes. A stroke of length L with turns a_i at its corners, at speed v: {@code laser_on + L/v +
 * sum(corner * a_i / 180) + mark_settle + laser_off}; the corner where a closed stroke comes back counts. A jump over d:
 * {@code d / jump_speed + jump_settle}; one of no length costs nothing. Accelerations are not modelled: the delays stand
 * for them, as they do in scanners' own settings.
 */
public final class TimeModel {
    private final Machine machine;
    private final double strokeDelay;

    public TimeModel(Machine machine) {
        this.machine = machine;
        this.strokeDelay = machine.laserOn() + machine.markSettle() + machine.laserOff();
    }

    /** The strokes of an item in a step, and the jumps between them and between the passes; not the jump into the item. */
    public Tally measure(BeamPath path, Step step) {
        Tally sum = Tally.ZERO;
        Tally pass = Tally.ZERO;
        List<Strokes> passes = path.passes();
        for (int i = 0; i < passes.size(); i++) {
            Strokes strokes = passes.get(i);
            if (i > 0) {
                sum = sum.plus(jump(passes.get(i - 1).last(), strokes.first()));
            }
            if (i == 0 || strokes != passes.get(i - 1)) {
                pass = measure(strokes, step.speed());
            }
            sum = sum.plus(pass);
        }
        return sum;
    }

    /** The strokes at a speed (mm/s), and the jumps between them. */
    public Tally measure(Strokes strokes, double speed) {
        double mm = 0;
        double turning = 0;
        for (int i = 0; i < strokes.count(); i++) {
            mm += strokes.length(i);
            turning += strokes.turning(i);
        }
        double marking = mm / speed + turning / 180 * machine.corner();
        double settling = strokes.count() * strokeDelay;
        Tally marks = new Tally(mm, 0, strokes.count(), 0, turning, marking, 0, settling);
        return marks.plus(tally(Jumps.between(strokes)));
    }

    /** A jump from one point to another. */
    public Tally jump(Point from, Point to) {
        return tally(Jumps.of(from.distance(to)));
    }

    /**
     * How many seconds the order of travel saves against marking everything in the order and directions of the file; both
     * ways start at the item's centre. Less than zero only where cutting inner outlines first costs more than that.
     */
    public double saved(BeamPath path) {
        return path.passes().equals(path.asDrawn()) ? 0 : travel(path.asDrawn()) - travel(path.passes());
    }

    private double travel(List<Strokes> passes) {
        Point at = Point.ORIGIN;
        double seconds = 0;
        for (Strokes pass : passes) {
            seconds += jump(at, pass.first()).plus(tally(Jumps.between(pass))).seconds();
            at = pass.last();
        }
        return seconds;
    }

    private Tally tally(Jumps jumps) {
        double settling = jumps.count() * machine.jumpSettle();
        return new Tally(0, jumps.mm(), 0, jumps.count(), 0, 0, jumps.mm() / machine.jumpSpeed(), settling);
    }
}
