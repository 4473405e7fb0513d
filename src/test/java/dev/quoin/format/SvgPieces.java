package dev.quoin.format;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.batik.parser.AWTPathProducer;
import org.apache.batik.parser.AWTTransformProducer;

/**
 * The pieces of the paths of an SVG file, in its order, as Batik's parsers of path data and transforms read them: length
 * and bounds, curves cut into lines within 1e-5 of them.
 *
 * @param group the id of the outermost group that it is in; empty outside
 */
record SvgPieces(String group, double length, Rectangle2D bounds) {
    private static final Pattern ELEMENT = Pattern.compile("<(g|path)\\b([^>]*)>");

    static List<SvgPieces> of(String svg, AffineTransform toMm) {
        List<SvgPieces> pieces = new ArrayList<>();
        String step = "";
        for (Matcher each = ELEMENT.matcher(svg); each.find(); ) {
            String id = attribute(each.group(2), "id");
            if (each.group(1).equals("path")) {
                AffineTransform move = new AffineTransform(toMm);
                move.concatenate(AWTTransformProducer.createAffineTransform(attribute(each.group(2), "transform")));
                add(step, path(attribute(each.group(2), "d"), move), pieces);
            } else if (id.startsWith("step-") && !id.contains("-item-")) {
                step = id;
            }
        }
        return pieces;
    }

    private static Shape path(String data, AffineTransform move) {
        try {
            return move.createTransformedShape(
                    AWTPathProducer.createShape(new StringReader(data), PathIterator.WIND_NON_ZERO));
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static String attribute(String attributes, String name) {
        Matcher value = Pattern.compile("\\b" + name + "=\"([^\"]*)\"").matcher(attributes);
        return value.find() ? value.group(1) : "";
    }

    private static void add(String step, Shape path, List<SvgPieces> pieces) {
        Path2D piece = new Path2D.Double();
        double length = 0;
        double[] start = new double[2];
        double[] last = new double[2];
        double[] to = new double[6];
        for (PathIterator i = new FlatteningPathIterator(path.getPathIterator(null), 1e-5, 16); !i.isDone(); i.next()) {
            int verb = i.currentSegment(to);
            if (verb == PathIterator.SEG_MOVETO) {
                finish(step, piece, length, pieces);
                piece = new Path2D.Double();
                piece.moveTo(to[0], to[1]);
                length = 0;
                start = to.clone();
            } else {
                double[] end = verb == PathIterator.SEG_CLOSE ? start : to;
                length += Math.hypot(end[0] - last[0], end[1] - last[1]);
                piece.lineTo(end[0], end[1]);
                to = end.clone();
            }
            last = to.clone();
            to = new double[6];
        }
        finish(step, piece, length, pieces);
    }

    private static void finish(String step, Path2D piece, double length, List<SvgPieces> pieces) {
        if (length > 0) {
            pieces.add(new SvgPieces(step, length, piece.getBounds2D()));
        }
    }
}
