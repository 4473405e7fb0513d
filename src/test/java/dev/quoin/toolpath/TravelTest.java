package dev.quoin.toolpath;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.art.Mark;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Point;
import dev.quoin.geometry.Polyline;
import dev.quoin.shop.Step;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;

/** The order of travel. */
class TravelTest {
    private static List<Piece> outlines(Path... paths) {
        List<Piece> pieces = new ArrayList<>();
        for (Path path : paths) {
            path.flatten(0.005).forEach(line -> pieces.add(Outline.of(line)));
        }
        return pieces;
    }

    /** Lines and closed triangles at random in a square of 60 mm. */
    private static List<Piece> scattered(int count, long seed) {
        Random random = new Random(seed);
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double x = random.nextDouble() * 60 - 30;
            double y = random.nextDouble() * 60 - 30;
            boolean closed = i % 3 == 0;
            double[] xy = {x, y, x + random.nextDouble() * 4, y, x + 1, y + random.nextDouble() * 4};
            pieces.add(new Outline(new Polyline(xy, closed), closed));
        }
        return pieces;
    }

    /** TSPLIB's rounded Euclidean length of a round trip. */
    private static long roundTrip(double[][] cities, int[] order) {
        long sum = 0;
        for (int i = 0; i < order.length; i++) {
            double[] a = cities[order[i]];
            double[] b = cities[order[(i + 1) % order.length]];
            sum += Math.round(Math.hypot(a[0] - b[0], a[1] - b[1]));
        }
        return sum;
    }

    private static double[][] berlin52() throws IOException {
        java.nio.file.Path file = java.nio.file.Path.of(System.getProperty("quoin.cases"), "travel", "berlin52.tsp");
        Assumptions.assumeTrue(Files.exists(file), () -> file + " is absent");
        return Files.readAllLines(file).stream()
                .filter(line -> line.matches("\\d+ .*"))
                .map(line -> line.split(" "))
                .map(cells -> new double[] {Double.parseDouble(cells[1]), Double.parseDouble(cells[2])})
                .toArray(double[][]::new);
    }

    private static int[] searched(double[][] cities, int kicks) {
        double[] x = new double[2 * cities.length];
        double[] y = new double[2 * cities.length];
        for (int end = 0; end < x.length; end++) {
            x[end] = cities[end / 2][0];
            y[end] = cities[end / 2][1];
        }
        Tour tour = Tour.closed(x, y);
        new TourSearch(tour, Neighbours.of(x, y, x.length)).run(kicks);
        return IntStream.range(0, cities.length).map(i -> tour.after(0, i)).toArray();
    }

    @Test
    void berlin52IsSolvedToItsOptimum() throws IOException {
        // G. Reinelt, TSPLIB95: the proven optimum of berlin52 is 7542.
        double[][] cities = berlin52();
        int[] order = searched(cities, 2_000);
        assertArrayEquals(
                IntStream.range(0, 52).toArray(), Arrays.stream(order).sorted().toArray());
        long length = roundTrip(cities, order);
        assertTrue(length >= 7542, "shorter than the optimum: " + length);
        assertTrue(length <= 7542 * 1.01, "far from the optimum: " + length);
    }

    @Test
    void withFewKicksItStaysNearTheOptimum() throws IOException {
        double[][] cities = berlin52();
        long length = roundTrip(cities, searched(cities, 104));
        assertTrue(length <= 7542 * 1.06, "far from the optimum: " + length);
    }

    @Property(tries = 60, seed = "2026")
    void neverLongerThanGreedyAndEachPieceOnce(@ForAll @IntRange(min = 1, max = 120) int count, @ForAll long seed) {
        List<Piece> pieces = scattered(count, seed);
        double greedy = Route.greedy(pieces, Point.ORIGIN).length(Point.ORIGIN);
        Route route = new Travel().route(pieces, Point.ORIGIN);
        assertTrue(route.length(Point.ORIGIN) <= greedy + 1e-6);
        assertArrayEquals(
                IntStream.range(0, count).toArray(),
                Arrays.stream(route.order()).sorted().toArray());
    }

    @Property(tries = 60, seed = "2026")
    void orderNeverChangesTheMarkedLength(@ForAll @IntRange(min = 1, max = 60) int count, @ForAll long seed) {
        Pass pass = Pass.through(scattered(count, seed), false);
        assertEquals(
                pass.asDrawn().length(),
                pass.ordered().length(),
                1e-9 * pass.asDrawn().length());
        assertEquals(count, pass.ordered().count());
    }

    @Property(tries = 20, seed = "2026")
    void upToSevenPiecesAreOrderedAsWellAsCanBe(@ForAll @IntRange(min = 2, max = 7) int count, @ForAll long seed) {
        // Against all orders and directions; from six on the search may stop in a dead end, and is allowed a tenth.
        Random random = new Random(seed);
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double[] xy = random.doubles(4, -10, 10).toArray();
            pieces.add(new Outline(new Polyline(xy, false), false));
        }
        double found = new Travel().route(pieces, Point.ORIGIN).length(Point.ORIGIN);
        double best = shortest(pieces, new boolean[count], 0, 0);
        assertTrue(found >= best - 1e-9, found + " < " + best);
        double allowed = count <= ShortestTravel.MOST_PIECES ? 1 : 1.1;
        assertTrue(found <= best * allowed + 1e-9, found + " > " + best);
    }

    private static double shortest(List<Piece> pieces, boolean[] done, double x, double y) {
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i < done.length; i++) {
            if (!done[i]) {
                Piece p = pieces.get(i);
                done[i] = true;
                double there = Math.hypot(p.startX(0) - x, p.startY(0) - y);
                double back = Math.hypot(p.endX(0) - x, p.endY(0) - y);
                best = Math.min(best, there + shortest(pieces, done, p.endX(0), p.endY(0)));
                best = Math.min(best, back + shortest(pieces, done, p.startX(0), p.startY(0)));
                done[i] = false;
            }
        }
        return best == Double.POSITIVE_INFINITY ? 0 : best;
    }

    @Test
    void aRowOfLinesIsRunToAndFro() {
        // Five lines of 10 mm, 1 mm apart, all drawn from left to right: the jumps between them need only 1 mm each.
        Path[] lines = new Path[5];
        for (int i = 0; i < 5; i++) {
            lines[i] = Given.line(0, i, 10, i);
        }
        Strokes strokes = new Travel().through(outlines(lines));
        assertEquals(4, Jumps.between(strokes).mm(), 1e-9);
        assertEquals(new Point(0, 0), strokes.first());
    }

    @Test
    void aClosedOutlineStartsWhereTheBeamComesFrom() {
        Strokes strokes = new Travel().through(outlines(Given.box(3, -5, 13, 5), Given.box(-20, -1, -10, 1)));
        assertTrue(strokes.isClosed(0));
        // The nearest corners to the centre: (3, +-5) at 5.8 mm, then (-10, +-1).
        assertEquals(3, strokes.first().x());
        assertEquals(-10, strokes.last().x());
    }

    @Test
    void cutsRunInsideOut() {
        Path tag = Given.box(40, 40);
        Path window = Given.box(-5, -5, 15, 5);
        Path island = Given.circle(5, 0, 2);
        Path hole = Given.circle(-12, 0, 3);
        Step step = Given.follow("cut", 100, 1);
        List<Mark> marks = List.of(
                Given.followed("cut", tag),
                Given.followed("cut", window),
                Given.followed("cut", island),
                Given.followed("cut", hole));
        Strokes strokes = new Tracer().trace(step, marks).passes().get(0);
        List<Double> lengths = IntStream.range(0, 4)
                .mapToObj(i -> (double) Math.round(strokes.length(i)))
                .toList();
        // Island (12.6 mm around) and hole (18.8) hold nothing, then the window (60), last the tag (160).
        assertEquals(
                List.of(13.0, 19.0), lengths.subList(0, 2).stream().sorted().toList());
        assertEquals(List.of(60.0, 160.0), lengths.subList(2, 4));
    }

    @Test
    void aSlitInsideACutPartComesBeforeItsEdge() {
        List<Mark> marks =
                List.of(Given.followed("cut", Given.box(10, 10)), Given.followed("cut", Given.line(-4, 4, 4, 4)));
        Strokes cut =
                new Tracer().trace(Given.follow("cut", 100, 1), marks).passes().get(0);
        assertEquals(8, cut.length(0), 1e-9);
    }

    @Test
    void theSheetCanSayWhatOrderingSaves() {
        // Three dots far apart, drawn in the worst order: 0 to 20 to -1 to 21, against -1, 20, 21: 62 less 23 mm of
        // jumps
        // at 1000 mm/s, as many jumps either way.
        Step step = Given.follow(100, 1);
        List<Mark> marks = List.of(
                Given.followed(Given.line(20, 0, 20, 0)),
                Given.followed(Given.line(-1, 0, -1, 0)),
                Given.followed(Given.line(21, 0, 21, 0)));
        TimeModel model = new TimeModel(Given.machine(1000, 0.001, 0.001, 0));
        BeamPath path = new Tracer().trace(step, marks);
        assertEquals(0.063 - 0.023, model.saved(path), 1e-12);
        assertEquals(
                0.021 + 0.022 + 2 * 0.001 + 3 * 0.001,
                model.measure(path.inFileOrder(), step).seconds(),
                1e-12);
    }

    @Test
    void theSameMarksGiveTheSameStrokes() {
        assertEquals(new Travel().through(scattered(80, 7)), new Travel().through(scattered(80, 7)));
    }
}
