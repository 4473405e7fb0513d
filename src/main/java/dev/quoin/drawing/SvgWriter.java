package dev.quoin.drawing;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Path;
import java.io.IOException;
import java.io.OutputStream;

/**
 * Writes an SVG drawing of groups and paths as it goes, in the order of its calls: {@link #start}, then groups and
 * paths, then {@link #end}. UTF-8, LF; coordinates with at most 3 decimals, curves kept. It does not close its stream.
 */
public final class SvgWriter {
    private static final int FLUSH_AT = 1 << 16;

    private final OutputStream out;
    private final SvgBytes bytes = new SvgBytes();
    private final PathWriter paths = new PathWriter(bytes);
    private int openGroups;

    public SvgWriter(OutputStream out) {
        this.out = out;
    }

    /** Begins the drawing: a page of this size, mm, one user unit a mm, the origin at its upper left, y down. */
    public SvgWriter start(double width, double height) {
        bytes.raw("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"");
        bytes.number(width).raw("mm\" height=\"").number(height).raw("mm\" viewBox=\"0 0 ");
        bytes.number(width).raw(" ").number(height).raw("\">\n");
        return this;
    }

    /** Opens a group; {@code attributes} are names and values in turn. */
    public SvgWriter group(String id, String... attributes) throws IOException {
        bytes.raw("<g").attribute("id", id).attributes(attributes).raw(">\n");
        openGroups++;
        return flushIfLarge();
    }

    /**
     * Closes the innermost group.
     *
     * @throws IllegalStateException if none is open
     */
    public SvgWriter endGroup() throws IOException {
        if (openGroups-- == 0) {
            throw new IllegalStateException("no group is open");
        }
        bytes.raw("</g>\n");
        return flushIfLarge();
    }

    /** Writes a whole path, moved; {@code attributes} are names and values in turn. */
    public SvgWriter path(Path path, Affine move, String... attributes) throws IOException {
        return startPath(attributes).append(path, move).endPath();
    }

    /** Begins a path of several pieces. */
    public SvgWriter startPath(String... attributes) {
        bytes.raw("<path").attributes(attributes).raw(" d=\"");
        paths.begin();
        return this;
    }

    /** Adds pieces to the path that was begun, moved on the way. */
    public SvgWriter append(Path path, Affine move) {
        paths.write(path, move);
        return this;
    }

    public SvgWriter endPath() throws IOException {
        bytes.raw("\"/>\n");
        return flushIfLarge();
    }

    /**
     * Ends the drawing and hands its last bytes to the stream.
     *
     * @throws IllegalStateException if a group is still open
     */
    public void end() throws IOException {
        if (openGroups != 0) {
            throw new IllegalStateException(openGroups + " groups are still open");
        }
        bytes.raw("</svg>\n");
        bytes.drainTo(out);
        out.flush();
    }

    private SvgWriter flushIfLarge() throws IOException {
        if (bytes.size() >= FLUSH_AT) {
            bytes.drainTo(out);
        }
        return this;
    }
}
