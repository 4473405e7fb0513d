package dev.quoin.geometry;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.io.DataOutput;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.List;

/** Lines and Bezier curves, in mm; one or several pieces, each begun by a move. Immutable. */
public final class Path {
    public static final Path EMPTY = new Builder().build();

    private static final byte MOVE = 0;
    private static final byte LINE = 1;
    private static final byte QUAD = 2;
    private static final byte CUBIC = 3;
    private static final byte CLOSE = 4;
    private static final int[] COORDINATES = {2, 2, 4, 6, 0};

    private final byte[] verbs;
    private final double[] xy;
    /** Worked out when first asked for. Two threads may both do so, with the same outcome. */
    private Box bounds;

    private Path(byte[] verbs, double[] xy) {
        this.verbs = verbs;
        this.xy = xy;
    }

    public static Builder builder() {
        return new Builder();
    }

    /** A builder with room for so many moves, lines, curves and closings, and so many points. */
    public static Builder builder(int verbs, int points) {
        return new Builder(verbs, 2 * points);
    }

    /** The outline of a platform shape; its winding rule is not kept. */
    public static Path of(Shape shape) {
        Builder path = new Builder();
        double[] p = new double[6];
        for (PathIterator it = shape.getPathIterator(null); !it.isDone(); it.next()) {
            switch (it.currentSegment(p)) {
                case PathIterator.SEG_MOVETO -> path.moveTo(p[0], p[1]);
                case PathIterator.SEG_LINETO -> path.lineTo(p[0], p[1]);
                case PathIterator.SEG_QUADTO -> path.quadTo(p[0], p[1], p[2], p[3]);
                case PathIterator.SEG_CUBICTO -> path.cubicTo(p[0], p[1], p[2], p[3], p[4], p[5]);
                default -> path.close();
            }
        }
        return path.build();
    }

    /** A closed rectangle. */
    public static Path of(Box box) {
        return builder()
                .moveTo(box.minX(), box.minY())
                .lineTo(box.maxX(), box.minY())
                .lineTo(box.maxX(), box.maxY())
                .lineTo(box.minX(), box.maxY())
                .close()
                .build();
    }

    /**
     * Pieces of one straight line each.
     *
     * @param xy the start and the end of each, x and y in turn; not copied, so it must never change
     */
    public static Path ofLines(double[] xy) {
        byte[] verbs = new byte[xy.length / 2];
        if (verbs.length > 0) {
            verbs[0] = MOVE;
            verbs[1] = LINE;
        }
        for (int done = 2; done < verbs.length; done *= 2) {
            System.arraycopy(verbs, 0, verbs, done, Math.min(done, verbs.length - done));
        }
        return new Path(verbs, xy);
    }

    /**
     * Reads what {@link #write} wrote.
     *
     * @param in in big-endian order; left where the path ends
     */
    public static Path read(ByteBuffer in) {
        byte[] verbs = new byte[in.getInt()];
        double[] xy = new double[in.getInt()];
        in.get(verbs);
        in.asDoubleBuffer().get(xy);
        in.position(in.position() + Double.BYTES * xy.length);
        return new Path(verbs, xy);
    }

    /** Writes it down exactly. */
    public void write(DataOutput out) throws IOException {
        out.writeInt(verbs.length);
        out.writeInt(xy.length);
        out.write(verbs);
        for (double coordinate : xy) {
            out.writeDouble(coordinate);
        }
    }

    public boolean isEmpty() {
        return verbs.length == 0;
    }

    public void forEach(PathVisitor visitor) {
        int i = 0;
        for (int v = 0; v < verbs.length; v++) {
            byte verb = verbs[v];
            int after = afterSegments(v);
            if (after > v) {
                visitor.segments(xy, i, i + 2 * (after - v));
                i += 2 * (after - v);
                v = after - 1;
                continue;
            }
            switch (verb) {
                case MOVE -> visitor.moveTo(xy[i], xy[i + 1]);
                case LINE -> visitor.lineTo(xy[i], xy[i + 1]);
                case QUAD -> visitor.quadTo(xy[i], xy[i + 1], xy[i + 2], xy[i + 3]);
                case CUBIC -> visitor.cubicTo(xy[i], xy[i + 1], xy[i + 2], xy[i + 3], xy[i + 4], xy[i + 5]);
                default -> visitor.close();
            }
            i += COORDINATES[verb];
        }
    }

    /** Where the pieces of one line each end that begin there. */
    private int afterSegments(int verb) {
        int v = verb;
        while (v + 1 < verbs.length
                && verbs[v] == MOVE
                && verbs[v + 1] == LINE
                && (v + 2 == verbs.length || verbs[v + 2] == MOVE)) {
            v += 2;
        }
        return v;
    }

    public Path transform(Affine move) {
        if (move.isIdentity()) {
            return this;
        }
        double[] moved = new double[xy.length];
        for (int i = 0; i < xy.length; i += 2) {
            moved[i] = move.x(xy[i], xy[i + 1]);
            moved[i + 1] = move.y(xy[i], xy[i + 1]);
        }
        return new Path(verbs, moved);
    }

    /** Moved twice: the same as one move after the other, to the last digit, with one look at each point. */
    public Path transform(Affine first, Affine then) {
        if (first.isIdentity() || then.isIdentity()) {
            return transform(first).transform(then);
        }
        double[] moved = new double[xy.length];
        for (int i = 0; i < xy.length; i += 2) {
            double x = first.x(xy[i], xy[i + 1]);
            double y = first.y(xy[i], xy[i + 1]);
            moved[i] = then.x(x, y);
            moved[i + 1] = then.y(x, y);
        }
        return new Path(verbs, moved);
    }

    /** The tight box around it: of the curves themselves, not of their control points. */
    public Box bounds() {
        Box known = bounds;
        if (known == null) {
            BoundsVisitor visitor = new BoundsVisitor();
            forEach(visitor);
            known = visitor.box();
            bounds = known;
        }
        return known;
    }

    /**
     * Its pieces as straight lines that leave the curves by no more than {@code tolerance} mm. Points that repeat the one
     * before them are dropped; a piece that is a lone point stays as one point.
     */
    public List<Polyline> flatten(double tolerance) {
        Flattener flattener = new Flattener(tolerance);
        forEach(flattener);
        return flattener.result();
    }

    /** Its length, curves measured along lines within {@code tolerance} mm of them; mm. */
    public double length(double tolerance) {
        return flatten(tolerance).stream().mapToDouble(Polyline::length).sum();
    }

    /** As a platform shape. */
    public Path2D toShape(FillRule rule) {
        Path2D shape = new Path2D.Double(rule == FillRule.EVEN_ODD ? Path2D.WIND_EVEN_ODD : Path2D.WIND_NON_ZERO);
        forEach(new ShapeVisitor(shape));
        return shape;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Path path && Arrays.equals(verbs, path.verbs) && Arrays.equals(xy, path.xy);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(verbs) + Arrays.hashCode(xy);
    }

    @Override
    public String toString() {
        return "Path[" + verbs.length + " pieces in " + bounds() + "]";
    }

    /** Makes a path piece by piece. */
    public static final class Builder {
        private byte[] verbs;
        private double[] xy;
        private int verbCount;
        private int coordinateCount;

        private Builder() {
            this(16, 32);
        }

        private Builder(int verbs, int coordinates) {
            this.verbs = new byte[verbs];
            this.xy = new double[coordinates];
        }

        public Builder moveTo(double x, double y) {
            if (endsInMove()) {
                xy[coordinateCount - 2] = x;
                xy[coordinateCount - 1] = y;
                return this;
            }
            return addPoint(MOVE, x, y);
        }

        public Builder lineTo(double x, double y) {
            return addPoint(LINE, x, y);
        }

        public Builder quadTo(double cx, double cy, double x, double y) {
            return add(QUAD, cx, cy, x, y);
        }

        public Builder cubicTo(double c1x, double c1y, double c2x, double c2y, double x, double y) {
            return add(CUBIC, c1x, c1y, c2x, c2y, x, y);
        }

        public Builder close() {
            return verbCount > 0 && verbs[verbCount - 1] == CLOSE ? this : add(CLOSE);
        }

        /** Appends the pieces of another path. */
        public Builder append(Path path) {
            begin(path);
            System.arraycopy(path.xy, 0, xy, coordinateCount - path.xy.length, path.xy.length);
            return this;
        }

        /** Appends the pieces of another path, moved. */
        public Builder append(Path path, double dx, double dy) {
            begin(path);
            int at = coordinateCount - path.xy.length;
            for (int i = 0; i < path.xy.length; i += 2) {
                xy[at + i] = path.xy[i] + dx;
                xy[at + i + 1] = path.xy[i + 1] + dy;
            }
            return this;
        }

        /** Makes room for these paths and no more. */
        public Builder reserve(Iterable<Path> paths) {
            int moreVerbs = 0;
            int moreCoordinates = 0;
            for (Path path : paths) {
                moreVerbs += path.verbs.length;
                moreCoordinates += path.xy.length;
            }
            verbs = Arrays.copyOf(verbs, verbCount + moreVerbs);
            xy = Arrays.copyOf(xy, coordinateCount + moreCoordinates);
            return this;
        }

        /** Takes the kinds of a path's pieces, and makes room for their points. */
        private void begin(Path path) {
            if (endsInMove() && !path.isEmpty()) {
                verbCount--;
                coordinateCount -= 2;
            }
            reserve(path.verbs.length, path.xy.length);
            System.arraycopy(path.verbs, 0, verbs, verbCount, path.verbs.length);
            verbCount += path.verbs.length;
            coordinateCount += path.xy.length;
        }

        /** The path so far; a trailing move that draws nothing is left out. */
        public Path build() {
            int verbEnd = endsInMove() ? verbCount - 1 : verbCount;
            int coordinateEnd = endsInMove() ? coordinateCount - 2 : coordinateCount;
            // Full arrays are replaced, never changed, when more is added.
            return new Path(
                    verbEnd == verbs.length ? verbs : Arrays.copyOf(verbs, verbEnd),
                    coordinateEnd == xy.length ? xy : Arrays.copyOf(xy, coordinateEnd));
        }

        private boolean endsInMove() {
            return verbCount > 0 && verbs[verbCount - 1] == MOVE;
        }

        /** As {@link #add}, for what there is most of. */
        private Builder addPoint(byte verb, double x, double y) {
            if (verbCount == 0 && verb != MOVE) {
                throw new IllegalStateException("a path starts with a move");
            }
            reserve(1, 2);
            verbs[verbCount++] = verb;
            xy[coordinateCount++] = x;
            xy[coordinateCount++] = y;
            return this;
        }

        private Builder add(byte verb, double... coordinates) {
            if (verbCount == 0 && verb != MOVE) {
                throw new IllegalStateException("a path starts with a move");
            }
            reserve(1, coordinates.length);
            verbs[verbCount++] = verb;
            System.arraycopy(coordinates, 0, xy, coordinateCount, coordinates.length);
            coordinateCount += coordinates.length;
            return this;
        }

        private void reserve(int moreVerbs, int moreCoordinates) {
            if (verbCount + moreVerbs > verbs.length) {
                verbs = Arrays.copyOf(verbs, Math.max(2 * verbs.length, verbCount + moreVerbs));
            }
            if (coordinateCount + moreCoordinates > xy.length) {
                xy = Arrays.copyOf(xy, Math.max(2 * xy.length, coordinateCount + moreCoordinates));
            }
        }
    }
}
