package dev.quoin.art;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Area;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import java.awt.BasicStroke;

/** The area that a shape's fill and stroke paint together. */
final class Painted {
    private Painted() {}

    /** What either covers, each place once. */
    static Area area(Area interior, Area stroke) {
        if (stroke.isEmpty()) {
            return interior;
        }
        if (interior.isEmpty()) {
            return stroke;
        }
        java.awt.geom.Area both = new java.awt.geom.Area(shape(interior));
        both.add(new java.awt.geom.Area(shape(stroke)));
        return new Area(Path.of(both), FillRule.NON_ZERO);
    }

    /** The area of a plain stroke of this width around a path, both in the path's own frame, moved by {@code move}. */
    static Area stroke(Path path, double width, Affine move) {
        if (width <= 0) {
            return Area.EMPTY;
        }
        BasicStroke pen = new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 4);
        return new Area(Path.of(pen.createStrokedShape(path.toShape(FillRule.NON_ZERO))), FillRule.NON_ZERO)
                .transform(move);
    }

    private static java.awt.Shape shape(Area area) {
        return area.outline().toShape(area.rule());
    }
}
