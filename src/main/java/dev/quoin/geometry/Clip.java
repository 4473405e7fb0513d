package dev.quoin.geometry;

/**
 * A window: what stands outside of its region does not show.
 *
 * @param region what shows; an empty one shows nothing
 */
public record Clip(Area region) {
    /** What stands over the edge by no more than this still stands inside, mm. */
    private static final double TOLERANCE = 0.001;

    /** How far the lines that are cut may leave the curves, mm. */
    private static final double FINE = 0.002;

    /** What shows through both windows. */
    public Clip and(Clip other) {
        return new Clip(cut(other.region));
    }

    public Clip transform(Affine move) {
        return new Clip(region.transform(move));
    }

    /** The part of an area that shows; curves stay curves. An area that shows whole stays as it is. */
    public Area cut(Area area) {
        if (area.isEmpty() || holds(area)) {
            return area;
        }
        java.awt.geom.Area seen = shape(area);
        seen.intersect(shape(region));
        return new Area(Path.of(seen), FillRule.NON_ZERO);
    }

    /**
     * The part of a path that shows, in pieces cut at the edge, in the path's order and direction. A path that shows
     * whole stays as it is; of one that is cut, curves become lines within 0.002 mm of them.
     */
    public Path cut(Path path) {
        LineCutter cutter = new LineCutter(region, FINE, TOLERANCE);
        return cutter.holds(path) ? path : cutter.cut(path);
    }

    /** Whether a path shows whole. */
    public boolean holds(Path path) {
        return new LineCutter(region, FINE, TOLERANCE).holds(path);
    }

    /** Whether an area shows whole. One over a window of several pieces counts as cut: it may span a hole. */
    public boolean holds(Area area) {
        return region.outline().flatten(FINE).size() == 1 && holds(area.outline());
    }

    private static java.awt.geom.Area shape(Area area) {
        return new java.awt.geom.Area(area.outline().toShape(area.rule()));
    }
}
