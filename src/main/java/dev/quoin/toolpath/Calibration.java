package dev.quoin.toolpath;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Machine;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Fits a machine's delays and handling to plates timed by the clock. A plate's time is its marking, which speeds and lengths
 * give, and each delay as often as it counts; the delays are those, none below zero, for which the sum of the squares of the
 * relative errors is least. What the plates cannot tell apart is held as it is, see {@link DelayChoice}. At least two plates
 * more than fitted delays are asked for, and times that no delays explain are refused.
 */
public final class Calibration {
    private static final int SPARE_PLATES = 2;
    /** A plate that stays this far off, as a share of its time, was timed wrongly, or stood still. */
    private static final double CONTRADICTION = 0.25;

    private static final Calibrated.Error NONE = new Calibrated.Error(0, 0);

    private final Machine machine;
    private final List<MeasuredPlate> plates;
    private final Problems problems;

    public Calibration(Machine machine, List<MeasuredPlate> plates, Problems problems) {
        this.machine = machine;
        this.plates = List.copyOf(plates);
        this.problems = problems;
    }

    /** The fit; nothing where the plates are too few, too alike or contradict each other, which is told. */
    public Optional<Calibrated> fit() {
        if (plates.size() < SPARE_PLATES + 2) {
            refuse(
                    plates.size() + (plates.size() == 1 ? " plate is" : " plates are") + " measured, which is too few",
                    "record the times of more plates with quoin done RUN --plate N --took M:SS");
            return Optional.empty();
        }
        DelayChoice choice = DelayChoice.of(machine, plates);
        if (choice.fitted().size() < 2) {
            refuse(
                    "the measured plates are too alike to tell one delay from another",
                    "measure plates with other artwork, or other numbers of items");
            return Optional.empty();
        }
        if (plates.size() < choice.fitted().size() + SPARE_PLATES) {
            refuse(
                    plates.size() + " plates are measured, and "
                            + choice.fitted().size() + " delays are unknown",
                    "measure " + (choice.fitted().size() + SPARE_PLATES - plates.size()) + " more");
            return Optional.empty();
        }
        Calibrated fitted = fit(choice);
        tellContradictions(fitted);
        return problems.hasErrors() ? Optional.empty() : Optional.of(fitted);
    }

    private Calibrated fit(DelayChoice choice) {
        Map<Delay, Double> delays = solve(choice, plates);
        if (delays.get(Delay.JUMP_MM) == 0) {
            DelayChoice without = choice.holding(
                    Delay.JUMP_MM, "the plates show no time that grows with the length of jumps, so its speed stays");
            return fit(without);
        }
        Calibrated.Error before = error(plate -> seconds(plate, current()));
        Calibrated.Error after = error(plate -> seconds(plate, delays));
        Calibrated.Error others = error(plate -> seconds(plate, solve(choice, without(plate))));
        return new Calibrated(delays, choice.held(), before, after, others);
    }

    private Map<Delay, Double> solve(DelayChoice choice, List<MeasuredPlate> from) {
        List<Delay> fitted = choice.fitted();
        double[][] a = new double[from.size()][fitted.size()];
        double[] b = new double[from.size()];
        Map<Delay, Double> delays = current();
        for (int i = 0; i < from.size(); i++) {
            MeasuredPlate plate = from.get(i);
            double rest = plate.seconds() - plate.marking();
            for (Delay delay : choice.held().keySet()) {
                rest -= delay.count(plate) * delays.get(delay);
            }
            b[i] = rest / plate.seconds();
            for (int j = 0; j < fitted.size(); j++) {
                a[i][j] = fitted.get(j).count(plate) * fitted.get(j).scale(machine) / plate.seconds();
            }
        }
        double[] x = NonNegativeLeastSquares.solve(a, b);
        for (int j = 0; j < fitted.size(); j++) {
            delays.put(fitted.get(j), x[j] * fitted.get(j).scale(machine));
        }
        return delays;
    }

    private Map<Delay, Double> current() {
        Map<Delay, Double> delays = new EnumMap<>(Delay.class);
        for (Delay delay : Delay.values()) {
            delays.put(delay, delay.of(machine));
        }
        return delays;
    }

    private List<MeasuredPlate> without(MeasuredPlate plate) {
        List<MeasuredPlate> others = new ArrayList<>(plates);
        others.remove(plate);
        return others;
    }

    private Calibrated.Error error(ToDoubleFunction<MeasuredPlate> foretold) {
        double squares = 0;
        double largest = 0;
        for (MeasuredPlate plate : plates) {
            double off = foretold.applyAsDouble(plate) / plate.seconds() - 1;
            squares += off * off;
            largest = Math.max(largest, Math.abs(off));
        }
        return new Calibrated.Error(Math.sqrt(squares / plates.size()), largest);
    }

    private static double seconds(MeasuredPlate plate, Map<Delay, Double> delays) {
        return new Calibrated(delays, Map.of(), NONE, NONE, NONE).seconds(plate);
    }

    private void tellContradictions(Calibrated fitted) {
        for (MeasuredPlate plate : plates) {
            double seconds = fitted.seconds(plate);
            if (Math.abs(seconds / plate.seconds() - 1) > CONTRADICTION) {
                refuse(
                        plate.name() + " took " + Math.round(plate.seconds()) + " s, where the other plates speak for "
                                + Math.round(seconds) + " s",
                        "leave it out if the work was interrupted, by recording its time again with quoin done --took");
            }
        }
    }

    private void refuse(String why, String remedy) {
        problems.error(Place.of("calibrate"), why, remedy);
    }
}
