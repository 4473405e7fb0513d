package dev.quoin.format;

import dev.quoin.art.Mark;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Polyline;
import dev.quoin.plate.LoadedItem;
import dev.quoin.shop.Method;
import dev.quoin.shop.Step;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/**
 * A plate as DXF, release 12 (AC1009), which every reader of DXF knows. Units are mm in the field's own coordinates: the
 * origin is its centre, x right, y up, the numbers those of {@code items.csv}. One layer a step; paths and the outlines of
 * areas are polylines, closed ones marked so, and dots are points. DXF of that release has no filled areas, so what is inside is told by
 * even-odd counting: outlines that overlap are joined before.
 */
final class PlateDxf implements PlateFormat {
    /**
     * How far lines may leave the curves, mm, the coarsest first: the first that keeps the length is taken, and the last is
     * no more than rounding to 3 decimals does. A line is shorter than its curve by a third of this for each radian that
     * the curve turns.
     */
    private static final double[] TOLERANCES = {0.004, 0.002, 0.001, 0.0005};

    private static final double FINEST = 0.0001;
    /** By how much the lines of a mark may be shorter than its curves, mm; rounding may take as much again. */
    private static final double SHORTER = 0.005;

    private final double field;
    private final boolean hatched;

    PlateDxf(double field, boolean hatched) {
        this.field = field;
        this.hatched = hatched;
    }

    @Override
    public void write(OutputStream out, List<Step> steps, List<LoadedItem> items) throws IOException {
        List<DxfLayer> layers = steps.stream().map(DxfLayer::of).toList();
        DxfWriter dxf = new DxfWriter(out);
        dxf.header(field / 2);
        dxf.layers(layers);
        dxf.section("ENTITIES");
        for (int i = 0; i < steps.size(); i++) {
            for (LoadedItem item : items) {
                write(dxf, layers.get(i), steps.get(i), item);
            }
        }
        dxf.endSection();
        dxf.end();
    }

    private void write(DxfWriter dxf, DxfLayer layer, Step step, LoadedItem item) throws IOException {
        for (Mark mark : item.marks(step)) {
            boolean lines = hatched || step.method() == Method.FOLLOW;
            Path path = lines ? mark.path() : DisjointOutline.of(mark.area());
            for (Polyline line : lines(path.transform(item.placement().pose()))) {
                if (line.size() > 1) {
                    dxf.polyline(layer, line, line.closed() || !lines);
                } else if (lines) {
                    dxf.dot(layer, line.x(0), line.y(0));
                }
            }
        }
    }

    private static List<Polyline> lines(Path path) {
        double length = path.length(FINEST);
        for (double tolerance : TOLERANCES) {
            List<Polyline> lines = path.flatten(tolerance);
            if (length - lines.stream().mapToDouble(Polyline::length).sum() <= SHORTER) {
                return lines;
            }
        }
        return path.flatten(TOLERANCES[TOLERANCES.length - 1]);
    }
}
