package dev.quoin.lettering;

import dev.quoin.drawing.TextAnchor;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Point;

/** A rectangle along the lines. All is in closed form. */
record RectangleSpace(Box box, TextAnchor anchor, VerticalAlign align) implements FitSpace {
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
