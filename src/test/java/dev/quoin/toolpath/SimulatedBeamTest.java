package dev.quoin.toolpath;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.quoin.art.Mark;
import dev.quoin.geometry.FillRule;
import dev.quoin.shop.Machine;
import dev.quoin.shop.Pattern;
import dev.quoin.shop.Step;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The closed form of the time against a beam that is moved in steps of a microsecond, waiting out each delay. */
class SimulatedBeamTest {
    private static final double TICK = 1e-6;

    /** A beam that knows only where it is, where it must go, and how fast. */
    private static final class Beam {
        private final Machine machine;
        private double x;
        private double y;
        private double clock;

        Beam(Machine machine, double x, double y) {
            this.machine = machine;
            this.x = x;
            this.y = y;
        }

        void run(Strokes strokes, double speed) {
            for (int i = 0; i < strokes.count(); i++) {
                int start = strokes.start(i);
                if (Math.hypot(strokes.x(start) - x, strokes.y(start) - y) > 1e-6) {
                    go(strokes.x(start), strokes.y(start), machine.jumpSpeed());
                    await(machine.jumpSettle());
                }
                await(machine.laserOn());
                stroke(strokes, i, speed);
                await(machine.markSettle());
                await(machine.laserOff());
            }
        }

        private void stroke(Strokes strokes, int i, double speed) {
            int start = strokes.start(i);
            int end = strokes.end(i);
            double heading = Double.NaN;
            double first = Double.NaN;
            for (int p = start + 1; p < end; p++) {
                double next = Math.atan2(strokes.y(p) - y, strokes.x(p) - x);
                corner(heading, next);
                first = p == start + 1 ? next : first;
                heading = next;
                go(strokes.x(p), strokes.y(p), speed);
            }
            if (end - start > 2 && x == strokes.x(start) && y == strokes.y(start)) {
                corner(heading, first);
            }
        }

        private void corner(double from, double to) {
            if (!Double.isNaN(from)) {
                double turn = Math.abs(to - from);
                await(machine.corner() * Math.min(turn, 2 * Math.PI - turn) / Math.PI);
            }
        }

        private void go(double toX, double toY, double speed) {
            double left = Math.hypot(toX - x, toY - y);
            double dx = (toX - x) / left * speed * TICK;
            double dy = (toY - y) / left * speed * TICK;
            while (left > speed * TICK) {
                x += dx;
                y += dy;
                clock += TICK;
                left = Math.hypot(toX - x, toY - y);
            }
            clock += left / speed;
            x = toX;
            y = toY;
        }

        private void await(double seconds) {
            clock += seconds;
        }
    }

    private static void agree(Step step, Mark... marks) {
        Machine machine = Given.machine(3500, 0.0004, 0.00015, 0.0006);
        BeamPath path = new Tracer().trace(step, List.of(marks));
        Beam beam = new Beam(
                machine,
                path.first().orElseThrow().x(),
                path.first().orElseThrow().y());
        path.passes().forEach(pass -> beam.run(pass, step.speed()));
        double expected = beam.clock;
        assertEquals(expected, new TimeModel(machine).measure(path, step).seconds(), 0.001 * expected);
    }

    @Test
    void aCrossedHatchInRegions() {
        Mark ring = Given.engraved(
                dev.quoin.geometry.Path.builder()
                        .append(Given.circle(0, 0, 4))
                        .append(Given.circle(1, 0, 2))
                        .build(),
                FillRule.EVEN_ODD);
        agree(Given.fill(0.1, 30, 90, 2, Pattern.REGIONS), ring);
        agree(Given.fill(0.1, 30, 90, 2, Pattern.LINES), ring);
    }

    @Test
    void followedOutlinesAndOpenLinesTwice() {
        agree(
                Given.follow(700, 2),
                Given.followed(Given.circle(3, 1, 2)),
                Given.followed(Given.box(2, 5)),
                Given.followed(Given.line(-8, 0, -4, 3, -6, 7, -6, 9)));
    }
}
