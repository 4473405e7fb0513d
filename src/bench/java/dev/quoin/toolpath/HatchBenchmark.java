package dev.quoin.toolpath;

import dev.quoin.drawing.SvgWriter;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Polyline;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Hatch lines a second on one thread, in a name of capitals 5 mm high at a spacing of 0.02 mm and 33 degrees: by ours; by
 * ours and written as SVG; by JTS with its letters in an STRtree, each line cut by those that it meets (overlay); and by
 * JTS's parts put together for the purpose, the edges in an STRtree and its line intersector. All give the same lines
 * within 1e-6 mm, or the benchmark stops.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
public class HatchBenchmark {
    private static final double SAME = 1e-6;
    private static final GeometryFactory JTS = new GeometryFactory();
    private static final double SPACING = 0.02;
    private static final Affine TO_PAGE = new Affine(1, 0, 0, -1, 100, 100);

    private final Grid grid = Grid.at(33, SPACING);
    private final Grid level = Grid.at(0, SPACING);
    private final SvgWriter svg = new SvgWriter(OutputStream.nullOutputStream());
    private List<Polyline> outline;
    /** The same outline, turned so that its lines lie level. */
    private List<Polyline> turned;

    /** How many lines there were. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.OPERATIONS)
    public static class Counter {
        /** Lines, or numbers. */
        public long lines;
    }

    /** Draws the name, and checks that both ways agree. */
    @Setup
    public void setUp() throws IOException {
        Path name = name();
        outline = name.flatten(Tracer.TOLERANCE);
        turned = name.transform(Affine.rotate(-33)).flatten(Tracer.TOLERANCE);
        Spans ours = Spans.of(hatch(turned, level));
        check(ours, byEdges());
        check(ours, byOverlay());
    }

    private static Path name() throws IOException {
        try (InputStream file = HatchBenchmark.class.getResourceAsStream("/dev/quoin/lettering/fonts/Barlow-Bold.ttf")) {
            Font font = Font.createFont(Font.TRUETYPE_FONT, file).deriveFont(700f);
            Path drawn = Path.of(font.createGlyphVector(new FontRenderContext(null, true, true), "Wilhelmina Featherstone")
                    .getOutline());
            return drawn.transform(Affine.scale(0.01, -0.01)).transform(Affine.translate(-35, -2.5));
        } catch (FontFormatException e) {
            throw new IOException(e);
        }
    }

    private static void check(Spans ours, List<double[]> theirs) {
        if (ours.count() != theirs.size()) {
            throw new IllegalStateException(ours.count() + " lines, and by JTS " + theirs.size());
        }
        for (int i = 0; i < ours.count(); i++) {
            for (int end = 0; end < 2; end++) {
                if (Math.abs(ours.u()[2 * i + end] - theirs.get(i)[end]) > SAME) {
                    throw new IllegalStateException("line " + i + " differs");
                }
            }
        }
    }

    /** The lines of the hatch, to and fro. */
    @Benchmark
    public Strokes hatch(Counter counter) {
        Strokes strokes = strokes();
        counter.lines += strokes.count();
        return strokes;
    }

    /** The same, written into a plate file that goes nowhere. */
    @Benchmark
    public SvgWriter hatchAndWrite(Counter counter) throws IOException {
        Strokes strokes = strokes();
        counter.lines += strokes.count();
        return svg.path(strokes.toPath(), TO_PAGE, "fill", "none");
    }

    /** Lines by the library's edge index and line intersector. */
    @Benchmark
    public List<double[]> jtsEdges(Counter counter) {
        List<double[]> lines = byEdges();
        counter.lines += lines.size();
        return lines;
    }

    /** Lines by the library's overlay. */
    @Benchmark
    public List<double[]> jtsOverlay(Counter counter) {
        List<double[]> lines = byOverlay();
        counter.lines += lines.size();
        return lines;
    }

    private static Hatch hatch(List<Polyline> outline, Grid grid) {
        return new Hatch(List.of(new Cover(outline, FillRule.NON_ZERO)), grid);
    }

    private Strokes strokes() {
        return Pass.across(hatch(outline, grid))
                .ordered();
    }

    private List<double[]> byEdges() {
        STRtree tree = new STRtree();
        Envelope box = new Envelope();
        for (Polyline chain : turned) {
            for (int i = 0, j = chain.size() - 1; i < chain.size(); j = i++) {
                Edge edge = new Edge(
                        new Coordinate(chain.x(j), chain.y(j)), new Coordinate(chain.x(i), chain.y(i)));
                Envelope own = new Envelope(edge.from, edge.to);
                box.expandToInclude(own);
                tree.insert(own, edge);
            }
        }
        List<double[]> lines = new ArrayList<>();
        int first = (int) Math.floor(level.line(0, box.getMinY())) + 1;
        int last = (int) Math.ceil(level.line(0, box.getMaxY())) - 1;
        for (int k = first; k <= last; k++) {
            cut(tree, box, level.y(0, k), lines);
        }
        return lines;
    }

    @SuppressWarnings("unchecked") // The library gives a raw list.
    private static void cut(STRtree tree, Envelope box, double y, List<double[]> lines) {
        Coordinate left = new Coordinate(box.getMinX() - 1, y);
        Coordinate right = new Coordinate(box.getMaxX() + 1, y);
        RobustLineIntersector crossing = new RobustLineIntersector();
        List<double[]> found = new ArrayList<>();
        for (Edge edge : (List<Edge>) tree.query(new Envelope(left, right))) {
            boolean isCrossed = edge.from.y < y != edge.to.y < y;
            crossing.computeIntersection(left, right, edge.from, edge.to);
            if (isCrossed && crossing.hasIntersection()) {
                found.add(new double[] {crossing.getIntersection(0).x, edge.to.y > edge.from.y ? 1 : -1});
            }
        }
        found.sort((a, b) -> Double.compare(a[0], b[0]));
        double winding = 0;
        double start = 0;
        for (double[] at : found) {
            double before = winding;
            winding += at[1];
            if (before == 0) {
                start = at[0];
            } else if (winding == 0 && at[0] - start > SAME) {
                lines.add(new double[] {start, at[0]});
            }
        }
    }

    private List<double[]> byOverlay() {
        List<Geometry> letters = letters();
        STRtree tree = new STRtree();
        Envelope box = new Envelope();
        for (Geometry letter : letters) {
            tree.insert(letter.getEnvelopeInternal(), letter);
            box.expandToInclude(letter.getEnvelopeInternal());
        }
        List<double[]> lines = new ArrayList<>();
        int first = (int) Math.floor(level.line(0, box.getMinY())) + 1;
        int last = (int) Math.ceil(level.line(0, box.getMaxY())) - 1;
        for (int k = first; k <= last; k++) {
            overlay(tree, box, level.y(0, k), lines);
        }
        return lines;
    }

    @SuppressWarnings("unchecked") // The library gives a raw list.
    private static void overlay(STRtree tree, Envelope box, double y, List<double[]> lines) {
        Geometry line = JTS.createLineString(
                new Coordinate[] {new Coordinate(box.getMinX() - 1, y), new Coordinate(box.getMaxX() + 1, y)});
        List<double[]> found = new ArrayList<>();
        for (Geometry letter : (List<Geometry>) tree.query(line.getEnvelopeInternal())) {
            Geometry cut = OverlayNG.overlay(line, letter, OverlayNG.INTERSECTION);
            for (int i = 0; i < cut.getNumGeometries(); i++) {
                Envelope part = cut.getGeometryN(i).getEnvelopeInternal();
                if (part.getWidth() > SAME) {
                    found.add(new double[] {part.getMinX(), part.getMaxX()});
                }
            }
        }
        found.sort((a, b) -> Double.compare(a[0], b[0]));
        lines.addAll(found);
    }

    /** Letters without crossings, each with its holes. */
    private List<Geometry> letters() {
        Geometry all = JTS.createPolygon();
        for (Polyline chain : turned) {
            Coordinate[] ring = new Coordinate[chain.size() + 1];
            for (int i = 0; i < ring.length; i++) {
                ring[i] = new Coordinate(chain.x(i % chain.size()), chain.y(i % chain.size()));
            }
            all = all.symDifference(JTS.createPolygon(ring));
        }
        List<Geometry> letters = new ArrayList<>();
        for (int i = 0; i < all.getNumGeometries(); i++) {
            letters.add(all.getGeometryN(i));
        }
        return letters;
    }

    private record Edge(Coordinate from, Coordinate to) {}
}
