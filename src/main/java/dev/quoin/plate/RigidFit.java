package dev.quoin.plate;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Point;
import dev.quoin.shop.JigShift;
import java.util.List;

/**
 * The turn and shift that bring points nearest to where they were measured, by least squares: both sets are taken around
 * their means, the turn is atan2(sum of cross products, sum of dot products), the shift then takes one mean to the other.
 * This is the plane case of Arun, Huang, Blostein, "Least-squares fitting of two 3-D point sets", IEEE Trans. PAMI 9 (1987),
 * from memory. Points that all coincide leave the turn at 0.
 *
 * @param shift about the origin of the points
 * @param rms the root of the mean square distance that remains, mm
 * @param mirroredRms the same for the best fit that also mirrors, mm; of two points it is as small
 */
public record RigidFit(JigShift shift, double rms, double mirroredRms) {
    /**
     * Fits.
     *
     * @param points where they should be, at least one, mm
     * @param measured where they are, in the same order, mm
     * @throws IllegalArgumentException if there are not as many of both
     */
    public static RigidFit of(List<Point> points, List<Point> measured) {
        if (points.isEmpty() || points.size() != measured.size()) {
            throw new IllegalArgumentException(points.size() + " points, " + measured.size() + " measured");
        }
        JigShift shift = fit(points, measured);
        List<Point> mirrored = points.stream().map(Affine.scale(-1, 1)::apply).toList();
        return new RigidFit(shift, rms(points, measured, shift), rms(mirrored, measured, fit(mirrored, measured)));
    }

    private static JigShift fit(List<Point> points, List<Point> measured) {
        Point from = mean(points);
        Point to = mean(measured);
        double dot = 0;
        double cross = 0;
        for (int i = 0; i < points.size(); i++) {
            double px = points.get(i).x() - from.x();
            double py = points.get(i).y() - from.y();
            double qx = measured.get(i).x() - to.x();
            double qy = measured.get(i).y() - to.y();
            dot += px * qx + py * qy;
            cross += px * qy - py * qx;
        }
        double angle = Math.toDegrees(Math.atan2(cross, dot));
        Point turned = Affine.rotate(angle).apply(from);
        return new JigShift(to.x() - turned.x(), to.y() - turned.y(), angle);
    }

    private static Point mean(List<Point> points) {
        return new Point(
                points.stream().mapToDouble(Point::x).average().orElse(0),
                points.stream().mapToDouble(Point::y).average().orElse(0));
    }

    private static double rms(List<Point> points, List<Point> measured, JigShift shift) {
        double squares = 0;
        for (int i = 0; i < points.size(); i++) {
            Point moved = shift.move().apply(points.get(i));
            double dx = moved.x() - measured.get(i).x();
            double dy = moved.y() - measured.get(i).y();
            squares += dx * dx + dy * dy;
        }
        return Math.sqrt(squares / points.size());
    }
}
