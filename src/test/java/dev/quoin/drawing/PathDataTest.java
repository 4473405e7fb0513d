package dev.quoin.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.geometry.Path;
import dev.quoin.geometry.Point;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PathDataTest {
    /** The reference draws what stands before the error, as SVG says; a plate with half a path would be spoilt. */
    private static final Set<String> ERRORS =
            Set.of("not_a_path", "not_a_move_to", "stop_on_err_1", "invalid_1", "invalid_2");

    static Stream<GrammarCase> cases() throws IOException {
        return GrammarCase.all("path");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void aPathOfTheGrammarEndsWhereTheReferenceSays(GrammarCase c) {
        if (ERRORS.contains(c.name())) {
            assertThrows(IllegalArgumentException.class, () -> PathData.parse(c.input()));
            return;
        }
        PathEnds parsed = new PathEnds();
        PathData.parse(c.input()).forEach(parsed);
        boolean hasArc = c.input().contains("A") || c.input().contains("a");
        List<Point> wanted = ends(c.segments());
        if (wanted.size() == 1) {
            assertEquals(List.of(), parsed.ends, "a lone move draws nothing");
        } else if (hasArc) {
            assertInOrder(wanted, parsed.ends);
        } else {
            assertSame(wanted, parsed.ends);
        }
        boolean hasControlPoints =
                c.segments().stream().noneMatch(s -> s.fields().containsKey("abs"));
        if (hasControlPoints && !hasArc && wanted.size() > 1) {
            assertSame(points(c.segments()), parsed.all);
        }
    }

    @Test
    void anArcOfAFullTurnHasTheCirclesLength() {
        Path circle = PathData.parse("M10 0A10 10 0 0 1 -10 0A10 10 0 0 1 10 0Z");
        assertEquals(2 * Math.PI * 10, circle.length(1e-4), 2 * Math.PI * 10 * 3e-4);
    }

    /** SVG 1.1, F.6.6: radii that are too small are made larger, both by the same factor. */
    @Test
    void anArcTooSmallForItsEndsGrowsAndStaysSmooth() {
        Path arc = PathData.parse("M0 0A1 2 0 0 1 10 0");
        assertEquals(-10, arc.bounds().minY(), 1e-3);
        assertEquals(5, (arc.bounds().minX() + arc.bounds().maxX()) / 2, 1e-9);
    }

    @Test
    void anArcsFlagsChooseOneOfFour() {
        assertEquals(10, PathData.parse("M0 0A10 10 0 0 1 10 10").bounds().maxX(), 1e-9);
        assertEquals(20, PathData.parse("M0 0A10 10 0 1 1 10 10").bounds().maxX(), 5e-3);
        assertEquals(10, PathData.parse("M0 0A10 10 0 0 0 10 10").bounds().maxY(), 1e-9);
        assertEquals(20, PathData.parse("M0 0A10 10 0 1 0 10 10").bounds().maxY(), 5e-3);
    }

    @Test
    void anErrorTellsTheCharacter() {
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> PathData.parse("M0 0L10 10K5"));
        assertEquals("not path data, from character 11", e.getMessage());
    }

    private static List<Point> ends(List<GrammarCase.Segment> segments) {
        List<Point> ends = new ArrayList<>();
        Point at = Point.ORIGIN;
        Point start = Point.ORIGIN;
        boolean closed = false;
        for (GrammarCase.Segment s : segments) {
            double fromX = s.isRelative() ? at.x() : 0;
            double fromY = s.isRelative() ? at.y() : 0;
            if (s.command().startsWith("Close")) {
                at = start;
                closed = true;
                continue;
            }
            if (closed && !s.command().equals("MoveTo")) {
                ends.add(start);
            }
            closed = false;
            at = switch (s.command()) {
                case "HorizontalLineTo" -> new Point(fromX + s.get("x"), at.y());
                case "VerticalLineTo" -> new Point(at.x(), fromY + s.get("y"));
                default -> new Point(fromX + s.get("x"), fromY + s.get("y"));
            };
            start = s.command().equals("MoveTo") ? at : start;
            ends.add(at);
        }
        return ends;
    }

    private static List<Point> points(List<GrammarCase.Segment> segments) {
        List<Point> points = new ArrayList<>();
        for (GrammarCase.Segment s : segments) {
            for (String i : List.of("1", "2", "")) {
                if (s.fields().containsKey("x" + i)) {
                    points.add(new Point(s.get("x" + i), s.get("y" + i)));
                }
            }
        }
        return points;
    }

    private static void assertSame(List<Point> wanted, List<Point> found) {
        assertEquals(wanted.size(), found.size(), found + " is not " + wanted);
        assertInOrder(wanted, found);
    }

    private static void assertInOrder(List<Point> wanted, List<Point> found) {
        int next = 0;
        for (Point point : found) {
            if (next < wanted.size() && point.distance(wanted.get(next)) < 1e-4) {
                next++;
            }
        }
        assertTrue(next == wanted.size(), found + " does not run through " + wanted);
    }
}
