package dev.quoin.toolpath;

import com.google.ortools.Loader;
import com.google.ortools.constraintsolver.Assignment;
import com.google.ortools.constraintsolver.FirstSolutionStrategy;
import com.google.ortools.constraintsolver.LocalSearchMetaheuristic;
import com.google.ortools.constraintsolver.RoutingIndexManager;
import com.google.ortools.constraintsolver.RoutingModel;
import com.google.ortools.constraintsolver.RoutingSearchParameters;
import com.google.ortools.constraintsolver.main;
import com.google.protobuf.Duration;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Round trips by our search, from the nearest-neighbour tour and with as many kicks as points, against a lower bound and
 * against OR-Tools (guided local search for so many seconds), on points at random and on those instances of TSPLIB that
 * stand under {@code quoin.cases}. Prints a table: {@code java ... dev.quoin.toolpath.TravelComparison 30}.
 */
public final class TravelComparison {
    private static final int KICKS_A_POINT = 40;

    private TravelComparison() {}

    /** Runs; the argument is the number of seconds for OR-Tools, 0 to leave it out. */
    public static void main(String[] args) throws IOException {
        int seconds = args.length == 0 ? 30 : Integer.parseInt(args[0]);
        if (seconds > 0) {
            Loader.loadNativeLibraries();
        }
        List<Instance> instances = new ArrayList<>();
        instances.add(random(300));
        instances.add(random(1_000));
        instances.addAll(tsplib());
        for (int i = 0; i < 30; i++) {
            ours(instances.get(i % 2), 10);
        }
        System.out.println("each: trip, over the bound, s; with a plate's kicks, with 1,000, with 40 a point; OR-Tools");
        for (Instance instance : instances) {
            print(instance, seconds);
        }
    }

    private static void print(Instance instance, int seconds) {
        int n = instance.x.length;
        List<Trip> trips = new ArrayList<>();
        for (int kicks : new int[] {10 + n / 8, 1_000, KICKS_A_POINT * n}) {
            trips.add(ours(instance, kicks));
        }
        double shortest = trips.get(2).length;
        double bound = OneTreeBound.of(instance.x, instance.y, shortest);
        if (seconds > 0) {
            trips.add(new Trip(orTools(instance, seconds), seconds));
        }
        StringBuilder line = new StringBuilder(String.format(Locale.ROOT, "%s: bound %.1f", instance.name, bound));
        for (Trip trip : trips) {
            line.append(String.format(
                    Locale.ROOT, " | %.1f, %.2f%%, %.3f s", trip.length, 100 * (trip.length / bound - 1), trip.seconds));
        }
        if (seconds > 0) {
            line.append(String.format(Locale.ROOT, " | ours / theirs %.4f", shortest / trips.get(3).length));
        }
        System.out.println(line);
    }

    private static Trip ours(Instance instance, int kicks) {
        long start = System.nanoTime();
        int n = instance.x.length;
        int[] order = nearestNeighbours(instance);
        double[] x = new double[2 * n];
        double[] y = new double[2 * n];
        for (int end = 0; end < 2 * n; end++) {
            x[end] = instance.x[order[end / 2]];
            y[end] = instance.y[order[end / 2]];
        }
        Tour tour = Tour.closed(x, y);
        new TourSearch(tour, Neighbours.of(x, y, 2 * n)).run(kicks);
        return new Trip(tour.length(), (System.nanoTime() - start) / 1e9);
    }

    private static int[] nearestNeighbours(Instance instance) {
        PointGrid grid = new PointGrid(instance.x, instance.y);
        int[] order = new int[instance.x.length];
        int[] found = {0};
        for (int i = 0; i < order.length; i++) {
            order[i] = found[0];
            grid.remove(order[i]);
            grid.nearest(instance.x[order[i]], instance.y[order[i]], found);
        }
        return order;
    }

    private static double orTools(Instance instance, int seconds) {
        int n = instance.x.length;
        RoutingIndexManager manager = new RoutingIndexManager(n, 1, 0);
        RoutingModel routing = new RoutingModel(manager);
        int transit = routing.registerTransitCallback(
                (from, to) -> Math.round(1000 * instance.between(manager.indexToNode(from), manager.indexToNode(to))));
        routing.setArcCostEvaluatorOfAllVehicles(transit);
        RoutingSearchParameters parameters = main.defaultRoutingSearchParameters().toBuilder()
                .setFirstSolutionStrategy(FirstSolutionStrategy.Value.PATH_CHEAPEST_ARC)
                .setLocalSearchMetaheuristic(LocalSearchMetaheuristic.Value.GUIDED_LOCAL_SEARCH)
                .setTimeLimit(Duration.newBuilder().setSeconds(seconds))
                .build();
        Assignment solution = routing.solveWithParameters(parameters);
        double length = 0;
        long index = routing.start(0);
        while (!routing.isEnd(index)) {
            long next = solution.value(routing.nextVar(index));
            length += instance.between(manager.indexToNode(index), manager.indexToNode(next));
            index = next;
        }
        return length;
    }

    private static Instance random(int count) {
        Random random = new Random(count);
        return new Instance(
                "random-" + count,
                random.doubles(count, 0, 100).toArray(),
                random.doubles(count, 0, 100).toArray());
    }

    private static List<Instance> tsplib() throws IOException {
        Path folder = Path.of(System.getProperty("quoin.cases", ""), "travel");
        List<Instance> found = new ArrayList<>();
        if (Files.isDirectory(folder)) {
            try (var files = Files.list(folder)) {
                for (Path file : files.filter(f -> f.toString().endsWith(".tsp"))
                        .sorted(Comparator.naturalOrder())
                        .toList()) {
                    found.add(read(file));
                }
            }
        }
        return found;
    }

    private static Instance read(Path file) throws IOException {
        double[][] points = Files.readAllLines(file).stream()
                .filter(line -> line.strip().matches("\\d+ .*"))
                .map(line -> line.strip().split("\\s+"))
                .map(cells -> new double[] {Double.parseDouble(cells[1]), Double.parseDouble(cells[2])})
                .toArray(double[][]::new);
        double[] x = new double[points.length];
        double[] y = new double[points.length];
        for (int i = 0; i < points.length; i++) {
            x[i] = points[i][0];
            y[i] = points[i][1];
        }
        return new Instance(file.getFileName().toString(), x, y);
    }

    /** Points, mm. */
    @SuppressWarnings("ArrayRecordComponent") // Never compared.
    private record Instance(String name, double[] x, double[] y) {
        double between(int i, int j) {
            return Math.hypot(x[i] - x[j], y[i] - y[j]);
        }
    }

    private record Trip(double length, double seconds) {}
}
