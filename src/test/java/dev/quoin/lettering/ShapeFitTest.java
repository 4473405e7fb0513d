package dev.quoin.lettering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.drawing.TextAnchor;
import dev.quoin.geometry.Area;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Point;
import dev.quoin.geometry.Polyline;
import java.awt.geom.Ellipse2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.algorithm.MinimumBoundingCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;

/** Given a closed shape that is no rectangle, then the ink lies inside it, as large as it can. */
class ShapeFitTest {
    private static final GeometryFactory JTS = new GeometryFactory();
    private static final Fitter FITTER = new Fitter(Fonts.TYPESETTER);
    private static final FontSet SANS = Fonts.of("sans-serif");

    private static final Path CIRCLE = Path.of(new Ellipse2D.Double(5, -20, 30, 30));
    private static final Path HEART = Path.builder()
            .moveTo(0, -14)
            .cubicTo(-8, -7, -16, -1, -16, 6)
            .cubicTo(-16, 14, -4, 16, 0, 8)
            .cubicTo(4, 16, 16, 14, 16, 6)
            .cubicTo(16, -1, 8, -7, 0, -14)
            .close()
            .build();
    private static final Path BONE = Path.builder()
            .moveTo(-10, -4)
            .lineTo(10, -4)
            .cubicTo(10, -12, 22, -10, 19, 0)
            .cubicTo(22, 10, 10, 12, 10, 4)
            .lineTo(-10, 4)
            .cubicTo(-10, 12, -22, 10, -19, 0)
            .cubicTo(-22, -10, -10, -12, -10, -4)
            .close()
            .build();
    private static final Path ELL = Path.builder()
            .moveTo(0, 0)
            .lineTo(30, 0)
            .lineTo(30, 9)
            .lineTo(18, 9)
            .lineTo(18, 26)
            .lineTo(0, 26)
            .close()
            .build();
    private static final Path RING = Path.builder()
            .append(CIRCLE)
            .append(Path.of(new Ellipse2D.Double(17, -8, 6, 6)))
            .build();
    private static final Map<String, Path> SHAPES =
            Map.of("circle", CIRCLE, "heart", HEART, "bone", BONE, "ring", RING, "ell", ELL);

    /**
     * The largest size in a circle is its radius by that of the smallest circle around the ink whose centre lies on the
     * ink's middle. Where the centre is free, JTS's MinimumBoundingCircle is a bound that no size may pass.
     */
    @ParameterizedTest
    @ValueSource(strings = {"Ada", "Maximilian", "g", "AV", "Þórður"})
    void inACircleTheInkIsAsLargeAsItsSmallestCircleAllows(String name) {
        TypesetText set = Fonts.set(name, "sans-serif");
        Coordinate[] ink = points(set.outline(), 1e-5);
        double x = set.ink().centre().x();
        double smallest = IntStream.rangeClosed(-1000, 2000)
                .mapToDouble(y -> Arrays.stream(ink)
                        .mapToDouble(p -> p.distance(new Coordinate(x, y / 1000.0)))
                        .max()
                        .orElseThrow())
                .min()
                .orElseThrow();
        double free = new MinimumBoundingCircle(JTS.createMultiPointFromCoords(ink)).getRadius();
        Fitted fitted = fitted(name, CIRCLE, 0, 1);
        assertEquals(15 / smallest * set.capHeight(), fitted.capHeight(), 0.004 * fitted.capHeight());
        assertTrue(fitted.capHeight() < 15 / free * set.capHeight());
        assertTrue(covers(CIRCLE, fitted.outline()));
    }

    /**
     * Against all places tried one by one: a line flush in the middle has the middle of its ink on the upright line through
     * the middle of the shape's box, at any height; of all those places it takes one where it can be largest. Its convex
     * hull is what must lie inside.
     */
    @ParameterizedTest
    @ValueSource(strings = {"heart", "bone", "ring", "ell"})
    void noOtherPlaceIsLargerByMoreThanAHundredth(String shape) {
        for (String name :
                List.of("Ada", "Wilhelmina", "g", "Jo", "Bartholomew Featherstone", "Þórður", "l", "W", "-")) {
            double brute = largestOfAllPlaces(name, SHAPES.get(shape));
            double found = fitted(name, SHAPES.get(shape), 0, 1).capHeight();
            assertEquals(1, found / brute, 0.01, shape + ", " + name + ": " + found + " and " + brute);
        }
    }

    /** Cap height, by the largest size at each of a thousand heights, and of ten times as many around the best. */
    private static double largestOfAllPlaces(String name, Path shape) {
        TypesetText set = Fonts.set(name, "sans-serif");
        Geometry hull =
                JTS.createMultiPointFromCoords(points(set.outline(), 1e-4)).convexHull();
        Point middle = set.ink().centre();
        // The same margin as ours keeps for the flattening of curves.
        PreparedGeometry space = PreparedGeometryFactory.prepare(geometry(shape).buffer(-2 * SpacePolygon.FLATNESS));
        Box box = shape.bounds();
        double best = 0;
        double step = box.height() / 1000;
        double at = box.minY();
        for (int i = 1; i < 1000; i++) {
            double size = largestAt(hull, middle, space, box.centre().x(), box.minY() + i * step, best);
            at = size > best ? box.minY() + i * step : at;
            best = Math.max(best, size);
        }
        for (int i = -10; i <= 10; i++) {
            best = Math.max(best, largestAt(hull, middle, space, box.centre().x(), at + i * step / 10, best));
        }
        return best * set.capHeight();
    }

    /** A convex line that lies inside does so at any smaller size, drawn in around a point of its own. */
    private static double largestAt(
            Geometry hull, Point middle, PreparedGeometry space, double x, double y, double worthIt) {
        double least = worthIt;
        double most = 1000;
        if (!coversAt(hull, middle, space, x, y, least + 1e-9)) {
            return 0;
        }
        while (most - least > 1e-4 * most) {
            double size = (least + most) / 2;
            if (coversAt(hull, middle, space, x, y, size)) {
                least = size;
            } else {
                most = size;
            }
        }
        return least;
    }

    private static boolean coversAt(
            Geometry hull, Point middle, PreparedGeometry space, double x, double y, double size) {
        return space.covers(new AffineTransformation(size, 0, x - size * middle.x(), 0, size, y - size * middle.y())
                .transform(hull));
    }

    @Test
    void aRoundedRectangleGivesWhatItsStraightSidesGive() {
        Path rounded = Path.of(new RoundRectangle2D.Double(0, 0, 40, 12, 2, 2));
        Fitted inRounded = fitted("Bartholomew Featherstone", rounded, 0, 1);
        Fitted inBox = fitted("Bartholomew Featherstone", Path.of(new Box(0, 0, 40, 12)), 0, 1);
        assertEquals(inBox.capHeight(), inRounded.capHeight(), 0.001 * inBox.capHeight());
        assertEquals(
                inBox.outline().bounds().minY(), inRounded.outline().bounds().minY(), 0.02);
        assertEquals(20, inRounded.outline().bounds().centre().x(), 0.02);
    }

    @ParameterizedTest
    @ValueSource(strings = {"circle", "heart", "bone", "ring"})
    void inkLiesInsideTheShape(String shape) {
        checkNames(SHAPES.get(shape), 100, 3);
    }

    /** "Jo" would go into the hole, which no edge keeps it from once it is there. */
    @Test
    void aShortLineDoesNotSlipIntoAHole() {
        assertTrue(covers(RING, fitted("von Maximilian Jo", RING, 0, 3).outline()));
    }

    /** Ten thousand random names. */
    @Tag("slow")
    @ParameterizedTest
    @ValueSource(strings = {"circle", "heart", "bone", "ring"})
    void inkOfTenThousandNamesLiesInsideTheShape(String shape) {
        checkNames(SHAPES.get(shape), 2_500, 4);
    }

    @Test
    void inAHeartALongNameStandsAboveTheMiddleWhereThereIsRoom() {
        Fitted fitted = fitted("Wilhelmina", HEART, 0, 1);
        // By hand: between the straight flanks and the lobes the heart is some 30 mm wide at y = 5.
        assertTrue(fitted.outline().bounds().width() > 27, fitted::toString);
        assertEquals(0, fitted.outline().bounds().centre().x(), 0.05);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Jo", "Ada", "Li"})
    void aTextFlushInTheMiddleStandsOnTheMiddleOfTheHeart(String name) {
        assertEquals(0, fitted(name, HEART, 0, 1).outline().bounds().centre().x(), 1e-6);
    }

    @Test
    void aTextFlushAtItsStartIsStillInside() {
        FitRequest request = new FitRequest(
                new Area(BONE, FillRule.NON_ZERO),
                TextAnchor.START,
                VerticalAlign.TOP,
                0,
                0.01,
                OptionalDouble.of(2),
                2,
                1);
        Fitted fitted = assertInstanceOf(Fitted.class, FITTER.fit("Jo Ng", SANS, request));
        assertTrue(covers(BONE, fitted.outline()));
        assertTrue(fitted.outline().bounds().minX() < -10, fitted::toString);
    }

    @Test
    void aSmallTextStandsInTheMiddleOfItsShape() {
        FitRequest request = request(CIRCLE, 0, 1).withGreatest(2);
        Fitted fitted = assertInstanceOf(Fitted.class, FITTER.fit("HH", SANS, request));
        assertEquals(2, fitted.capHeight(), 1e-9);
        assertEquals(20, fitted.outline().bounds().centre().x(), 1e-6);
        assertEquals(-5, fitted.outline().bounds().centre().y(), 1e-6);
    }

    @Test
    void theInsetKeepsInkFromTheEdge() {
        Fitted fitted = fitted("Ada", HEART, 1.5, 2);
        assertTrue(geometry(HEART).getBoundary().distance(geometry(fitted.outline())) > 1.49);
    }

    @Test
    void aShapeWithoutRoomIsTooLong() {
        assertEquals(new TooLong(0), FITTER.fit("Ada", SANS, request(CIRCLE, 16, 1)));
    }

    private static void checkNames(Path shape, int count, long seed) {
        List<String> parts = List.of(
                "Zoë",
                "Łukasz",
                "Nuñez",
                "Ng",
                "von",
                "der",
                "Maximilian",
                "Jo",
                "Þórður",
                "O'Brien",
                "Ünal",
                "Åsa-Britt");
        Random random = new Random(seed);
        for (int i = 0; i < count; i++) {
            List<String> words = new ArrayList<>();
            for (int n = 1 + random.nextInt(4); n > 0; n--) {
                words.add(parts.get(random.nextInt(parts.size())));
            }
            String name = String.join(" ", words);
            int lines = 1 + random.nextInt(3);
            Fitted fitted = fitted(name, shape, 0, lines);
            assertTrue(covers(shape, fitted.outline()), () -> name + " in " + lines + " lines: " + fitted);
            assertTrue(fitted.capHeight() > 0.5, () -> name + " in " + lines + " lines: " + fitted);
        }
    }

    private static Fitted fitted(String text, Path shape, double inset, int lines) {
        FitResult result = FITTER.fit(text, SANS, request(shape, inset, lines));
        return assertInstanceOf(Fitted.class, result, () -> text + ": " + result);
    }

    private static FitRequest request(Path shape, double inset, int lines) {
        return new FitRequest(
                new Area(shape, FillRule.EVEN_ODD),
                TextAnchor.MIDDLE,
                VerticalAlign.MIDDLE,
                inset,
                0.01,
                OptionalDouble.empty(),
                lines,
                1);
    }

    /** JTS {@code covers}, both drawn in lines within a micrometre of the curves. */
    private static boolean covers(Path shape, Path outline) {
        PreparedGeometry space = PreparedGeometryFactory.prepare(geometry(shape));
        return outline.flatten(1e-3).stream().allMatch(line -> space.covers(chain(line)));
    }

    private static Geometry geometry(Path shape) {
        Geometry whole = JTS.createPolygon();
        for (Polyline line : shape.flatten(1e-3)) {
            whole = whole.symDifference(
                    JTS.createPolygon(chain(line).getCoordinates()).buffer(0));
        }
        return whole;
    }

    private static Geometry chain(Polyline line) {
        Coordinate[] ring = new Coordinate[line.size() + 1];
        for (int i = 0; i < line.size(); i++) {
            ring[i] = new Coordinate(line.x(i), line.y(i));
        }
        ring[line.size()] = ring[0];
        return JTS.createLineString(ring);
    }

    private static Coordinate[] points(Path outline, double tolerance) {
        List<Coordinate> points = new ArrayList<>();
        for (Polyline line : outline.flatten(tolerance)) {
            for (int i = 0; i < line.size(); i++) {
                points.add(new Coordinate(line.x(i), line.y(i)));
            }
        }
        return points.toArray(Coordinate[]::new);
    }
}
