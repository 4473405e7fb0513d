package dev.quoin.toolpath;

import dev.quoin.geometry.Decimals;
import dev.quoin.shop.Machine;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Which delays some plates can tell. The share that a delay has in each plate's time is a vector; the delays are taken in the
 * order of what they still explain beside those taken before (Gram and Schmidt's way, largest first), until what is left of
 * one is too little to be seen under the scatter of a clock.
 *
 * @param fitted in the order of {@link Delay}
 * @param held why, for the others
 */
record DelayChoice(List<Delay> fitted, Map<Delay, String> held) {
    /** A part of a plate's time that is lost in the scatter. */
    private static final double LEAST_SHARE = 0.003;
    /** The sine of the angle under which two delays look alike. */
    private static final double LEAST_ANGLE = 0.03;

    static DelayChoice of(Machine machine, List<MeasuredPlate> plates) {
        Map<Delay, double[]> own = new EnumMap<>(Delay.class);
        Map<Delay, double[]> left = new EnumMap<>(Delay.class);
        for (Delay delay : Delay.values()) {
            double[] shares = plates.stream()
                    .mapToDouble(plate -> delay.count(plate) * delay.scale(machine) / plate.seconds())
                    .toArray();
            own.put(delay, shares);
            left.put(delay, shares.clone());
        }
        List<Delay> taken = new ArrayList<>();
        while (!left.isEmpty()) {
            Delay best = Collections.max(left.keySet(), (a, b) -> Double.compare(size(left.get(a)), size(left.get(b))));
            if (size(left.get(best)) < LEAST_SHARE * Math.sqrt(plates.size())) {
                break;
            }
            double[] direction = left.remove(best);
            if (size(direction) >= LEAST_ANGLE * size(own.get(best))) {
                taken.add(best);
                left.values().forEach(rest -> takeOut(rest, direction));
            }
        }
        return describe(taken, own, plates.size());
    }

    /** The same with one delay more held. */
    DelayChoice holding(Delay delay, String why) {
        Map<Delay, String> more = new EnumMap<>(Delay.class);
        more.putAll(held);
        more.put(delay, why);
        return new DelayChoice(fitted.stream().filter(one -> one != delay).toList(), more);
    }

    private static DelayChoice describe(List<Delay> taken, Map<Delay, double[]> own, int plates) {
        Map<Delay, String> held = new EnumMap<>(Delay.class);
        List<Delay> fitted = new ArrayList<>();
        for (Delay delay : Delay.values()) {
            double share = size(own.get(delay)) / Math.sqrt(plates);
            if (taken.contains(delay)) {
                fitted.add(delay);
            } else if (share < LEAST_SHARE) {
                held.put(delay, "it is only " + Decimals.text(100 * share, 1) + " % of the plates' times");
            } else {
                Delay like = Collections.max(
                        taken,
                        (a, b) ->
                                Double.compare(cosine(own.get(a), own.get(delay)), cosine(own.get(b), own.get(delay))));
                held.put(delay, "on these plates it cannot be told from " + like.setting());
            }
        }
        return new DelayChoice(fitted, held);
    }

    private static void takeOut(double[] vector, double[] direction) {
        double along = dot(vector, direction) / dot(direction, direction);
        for (int i = 0; i < vector.length; i++) {
            vector[i] -= along * direction[i];
        }
    }

    private static double cosine(double[] a, double[] b) {
        return dot(a, b) / Math.max(size(a) * size(b), Double.MIN_NORMAL);
    }

    private static double size(double[] vector) {
        return Math.sqrt(dot(vector, vector));
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
