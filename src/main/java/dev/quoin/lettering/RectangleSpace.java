package dev.quoin.lettering;

import dev.quoin.drawing.TextAnchor;
import dev.quoin.geometry.Area;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Point;
import dev.quoin.geometry.Polyline;
import java.util.List;
import java.util.Optional;

/** A rectangle along the lines. All is in closed form. */
record RectangleSpace(Box box, TextAnchor anchor, VerticalAlign align) implements FitSpace {
    /** How far a curve would leave the lines that stand for it, mm. */
    private static final double FLATNESS = 0.01;

    private static final double SAME = 1e-9;

    /** An area less an inset, if it is a rectangle along the lines. */
    static Optional<FitSpace> of(Area area, double inset, TextAnchor anchor, VerticalAlign align) {
        Path outline = area.outline();
        Box bounds = outline.bounds();
        List<Polyline> rings = outline.flatten(FLATNESS);
        boolean rectangle = rings.size() == 1
                && rings.get(0).size() <= 5
                && Math.abs(Math.abs(rings.get(0).signedArea()) - bounds.width() * bounds.height())
                        <= SAME * bounds.width() * bounds.height();
        Box inner = bounds.grow(-inset - ROUNDING);
        return rectangle ? Optional.of(new RectangleSpace(inner, anchor, align)) : Optional.empty();
    }

    @Override
    public double largest(TextBlock block, double squeeze) {
        Box ink = block.ink(anchor, squeeze);
        return Math.min(box.width() / ink.width(), box.height() / ink.height());
    }

    @Override
    public Point origin(TextBlock block, double squeeze, double size) {
        double x =
                switch (anchor) {
                    case START -> box.minX();
                    case MIDDLE -> box.centre().x();
                    case END -> box.maxX();
                };
        Box ink = block.ink(anchor, squeeze);
        double y = align.baseline(box, block, size);
        double lowest = box.minY() - ink.minY() * size;
        double highest = box.maxY() - ink.maxY() * size;
        return new Point(x, Math.min(highest, Math.max(lowest, y)));
    }

    @Override
    public boolean isRectangle() {
        return true;
    }
}
