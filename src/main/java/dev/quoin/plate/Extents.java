package dev.quoin.plate;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Where there is ink along one direction: stretches that lie apart, mm. */
final class Extents {
    /** Stretches nearer to one another than this count as one: a seam needs some room. */
    static final double ROOM = 0.1;

    /** A stretch. */
    record Stretch(double from, double to) {
        double length() {
            return to - from;
        }
    }

    private final TreeMap<Double, Double> stretches = new TreeMap<>();

    void add(double from, double to) {
        double low = from;
        double high = to;
        Map.Entry<Double, Double> near = stretches.floorEntry(high + ROOM);
        while (near != null && near.getValue() >= low - ROOM) {
            low = Math.min(low, near.getKey());
            high = Math.max(high, near.getValue());
            stretches.remove(near.getKey());
            near = stretches.floorEntry(high + ROOM);
        }
        stretches.put(low, high);
    }

    /** The stretches, ascending. */
    List<Stretch> all() {
        List<Stretch> all = new ArrayList<>();
        stretches.forEach((from, to) -> all.add(new Stretch(from, to)));
        return all;
    }
}
