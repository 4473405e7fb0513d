package dev.quoin.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Cuts lines at the edge of a region. Each line is parted where it meets an edge; a part is kept if its middle lies
 * inside, or on the edge. It costs one step for each line and edge.
 */
final class LineCutter {
    private final Area region;
    private final double flatness;
    private final double tolerance;
    private final Box bounds;
    /** The edges: x0, y0, x1, y1 of each. */
    private final double[] edges;

    /**
     * Takes the region.
     *
     * @param flatness how far lines may leave the curves they stand for, mm
     * @param tolerance how far outside still counts as on the edge, mm
     */
    LineCutter(Area region, double flatness, double tolerance) {
        this.region = region;
        this.flatness = flatness;
        this.tolerance = tolerance;
        this.bounds = region.outline().bounds();
        this.edges = edges(region.outline().flatten(flatness));
    }

    /** Whether all of a path lies inside. */
    boolean holds(Path path) {
        if (!bounds.contains(path.bounds(), tolerance)) {
            return false;
        }
        return path.flatten(flatness).stream().allMatch(line -> {
            List<Polyline> kept = cut(line);
            return kept.size() == 1 && Math.abs(kept.get(0).length() - line.length()) <= tolerance;
        });
    }

    /** The pieces of a path that lie inside. */
    Path cut(Path path) {
        Path.Builder cut = Path.builder();
        for (Polyline line : path.flatten(flatness)) {
            for (Polyline kept : cut(line)) {
                append(kept, cut);
            }
        }
        return cut.build();
    }

    private List<Polyline> cut(Polyline line) {
        Chains chains = new Chains();
        int n = line.size();
        for (int i = 1; i < (line.closed() ? n + 1 : n); i++) {
            cut(line.x(i - 1), line.y(i - 1), line.x(i % n), line.y(i % n), chains);
        }
        if (n == 1 && isInside(line.x(0), line.y(0))) {
            return List.of(line);
        }
        return chains.result(line);
    }

    private void cut(double x0, double y0, double x1, double y1, Chains chains) {
        double[] stops = stops(x0, y0, x1, y1);
        for (int i = 1; i < stops.length; i++) {
            double middle = (stops[i - 1] + stops[i]) / 2;
            if (isInside(x0 + middle * (x1 - x0), y0 + middle * (y1 - y0))) {
                double from = stops[i - 1];
                double to = stops[i];
                chains.add(
                        from == 0 ? x0 : x0 + from * (x1 - x0),
                        from == 0 ? y0 : y0 + from * (y1 - y0),
                        to == 1 ? x1 : x0 + to * (x1 - x0),
                        to == 1 ? y1 : y0 + to * (y1 - y0));
            }
        }
    }

    /** Where along a line it may change sides, from 0 to 1, both included. */
    private double[] stops(double x0, double y0, double x1, double y1) {
        double[] stops = new double[8];
        int count = 1;
        double dx = x1 - x0;
        double dy = y1 - y0;
        for (int e = 0; e < edges.length; e += 4) {
            double ex = edges[e + 2] - edges[e];
            double ey = edges[e + 3] - edges[e + 1];
            double cross = dx * ey - dy * ex;
            double wx = edges[e] - x0;
            double wy = edges[e + 1] - y0;
            double along = (wx * ey - wy * ex) / cross;
            double across = (wx * dy - wy * dx) / cross;
            if (along > 0 && along < 1 && across >= 0 && across <= 1) {
                stops = count + 1 < stops.length ? stops : Arrays.copyOf(stops, 2 * count + 2);
                stops[count++] = along;
            }
        }
        stops[count++] = 1;
        double[] sorted = Arrays.copyOf(stops, count);
        Arrays.sort(sorted);
        return sorted;
    }

    private boolean isInside(double x, double y) {
        int winding = 0;
        for (int e = 0; e < edges.length; e += 4) {
            double x0 = edges[e] - x;
            double y0 = edges[e + 1] - y;
            double x1 = edges[e + 2] - x;
            double y1 = edges[e + 3] - y;
            if (isNear(x0, y0, x1, y1)) {
                return true;
            }
            double cross = x0 * y1 - x1 * y0;
            if (y0 <= 0 && y1 > 0 && cross > 0) {
                winding++;
            } else if (y0 > 0 && y1 <= 0 && cross < 0) {
                winding--;
            }
        }
        return region.rule() == FillRule.EVEN_ODD ? winding % 2 != 0 : winding != 0;
    }

    /** Whether an edge passes the origin within the tolerance. */
    private boolean isNear(double x0, double y0, double x1, double y1) {
        double dx = x1 - x0;
        double dy = y1 - y0;
        double square = dx * dx + dy * dy;
        double t = square == 0 ? 0 : Math.max(0, Math.min(1, -(x0 * dx + y0 * dy) / square));
        double nx = x0 + t * dx;
        double ny = y0 + t * dy;
        return nx * nx + ny * ny <= tolerance * tolerance;
    }

    private static double[] edges(List<Polyline> lines) {
        double[] edges = new double[4 * lines.stream().mapToInt(Polyline::size).sum()];
        int at = 0;
        for (Polyline line : lines) {
            for (int i = 0, j = line.size() - 1; i < line.size(); j = i++) {
                edges[at++] = line.x(j);
                edges[at++] = line.y(j);
                edges[at++] = line.x(i);
                edges[at++] = line.y(i);
            }
        }
        return edges;
    }

    private static void append(Polyline line, Path.Builder path) {
        path.moveTo(line.x(0), line.y(0));
        for (int i = 1; i < line.size(); i++) {
            path.lineTo(line.x(i), line.y(i));
        }
        if (line.closed()) {
            path.close();
        }
    }

    /** The kept parts of one line, joined where they follow each other. */
    private static final class Chains {
        private final List<List<Double>> chains = new ArrayList<>();

        void add(double x0, double y0, double x1, double y1) {
            List<Double> last = chains.isEmpty() ? List.of() : chains.get(chains.size() - 1);
            int n = last.size();
            if (n == 0 || last.get(n - 2) != x0 || last.get(n - 1) != y0) {
                last = new ArrayList<>(List.of(x0, y0));
                chains.add(last);
            }
            last.add(x1);
            last.add(y1);
        }

        /** What is left of a line: itself, if nothing was cut off; a closed one continues over its start. */
        List<Polyline> result(Polyline line) {
            if (line.closed() && !chains.isEmpty()) {
                List<Double> first = chains.get(0);
                List<Double> last = chains.get(chains.size() - 1);
                int n = last.size();
                if (last.get(n - 2).equals(first.get(0)) && last.get(n - 1).equals(first.get(1))) {
                    if (chains.size() == 1) {
                        return List.of(line);
                    }
                    last.addAll(first.subList(2, first.size()));
                    chains.remove(0);
                }
            }
            return chains.stream()
                    .map(chain -> new Polyline(
                            chain.stream().mapToDouble(Double::doubleValue).toArray(), false))
                    .toList();
        }
    }
}
