package dev.quoin.job;

import dev.quoin.geometry.Point;
import dev.quoin.problem.Problems;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Reads to where a jig can be shifted from where it is loaded: the stops of a bar along x, along y, or both, as
 * {@code x=-60,0,60; y=0,80} or {@code x=-120:120:5} (first, last, how many); or the places that pins give it, as {@code
 * 0,0; 60,0; 60,80}.
 */
record JigSteps(JobSettings settings, Problems problems) {
    private static final int MOST = 400;
    private static final String REMEDY =
            "write the stops of a bar, such as x=-60,0,60 or x=-120:120:5; y=0,80, or places, such as 0,0; 60,0";

    /** The shifts, mm to the right and up; none where no steps are given. */
    List<Point> read() {
        Optional<String> text = settings.text(JobKey.JIG_STEPS);
        if (text.isEmpty()) {
            return List.of();
        }
        Optional<List<Point>> shifts = text.get().contains("=") ? stops(text.get()) : places(text.get());
        Optional<List<Point>> few = shifts.filter(all -> all.size() <= MOST);
        if (few.isEmpty()) {
            problems.error(
                    settings.place(JobKey.JIG_STEPS),
                    "jig-steps: '" + text.get() + "' "
                            + (shifts.isEmpty() ? "names no stops" : "gives more than " + MOST + " places"),
                    REMEDY);
        }
        return few.orElse(List.of()).stream().distinct().toList();
    }

    private static Optional<List<Point>> places(String text) {
        List<Point> places = new ArrayList<>();
        for (String one : text.split(";")) {
            Optional<List<Double>> xy = Numbers.read(one, 2);
            if (xy.isEmpty()) {
                return Optional.empty();
            }
            places.add(new Point(xy.get().get(0), xy.get().get(1)));
        }
        return Optional.of(places);
    }

    private static Optional<List<Point>> stops(String text) {
        Map<String, List<Double>> axes = new HashMap<>();
        for (String one : text.split(";")) {
            int equals = one.indexOf('=');
            String axis = one.substring(0, Math.max(0, equals)).strip();
            Optional<List<Double>> values = values(one.substring(equals + 1).strip());
            if (!axis.matches("[xy]") || values.isEmpty() || axes.put(axis, values.get()) != null) {
                return Optional.empty();
            }
        }
        List<Point> places = new ArrayList<>();
        for (double y : axes.getOrDefault("y", List.of(0.0))) {
            for (double x : axes.getOrDefault("x", List.of(0.0))) {
                places.add(new Point(x, y));
            }
        }
        return Optional.of(places);
    }

    private static Optional<List<Double>> values(String text) {
        String[] ends = text.split(":", -1);
        if (ends.length == 1) {
            return Numbers.read(text, (int) text.chars().filter(c -> c == ',').count() + 1);
        }
        if (ends.length != 3 || !ends[2].strip().matches("\\d{1,3}")) {
            return Optional.empty();
        }
        int count = Integer.parseInt(ends[2].strip());
        Optional<List<Double>> between = Numbers.read(ends[0] + "," + ends[1], 2);
        return between.filter(pair -> count >= 2).map(pair -> evenly(pair.get(0), pair.get(1), count));
    }

    private static List<Double> evenly(double first, double last, int count) {
        double[] values = IntStream.range(0, count)
                .mapToDouble(i -> Math.rint((first + (last - first) * i / (count - 1)) * 1000) / 1000)
                .toArray();
        return Arrays.stream(values).boxed().toList();
    }
}
