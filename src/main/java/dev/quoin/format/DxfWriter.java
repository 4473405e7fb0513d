package dev.quoin.format;

import dev.quoin.geometry.Decimals;
import dev.quoin.geometry.Polyline;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Writes the groups of an ASCII DXF file of release 12: a code on one line, its value on the next. LF; coordinates in mm
 * with at most 3 decimals.
 */
final class DxfWriter {
    private static final int FLUSH_AT = 1 << 16;
    private static final int CLOSED = 1;

    private final OutputStream out;
    private final StringBuilder text = new StringBuilder(FLUSH_AT + 1024);

    DxfWriter(OutputStream out) {
        this.out = out;
    }

    /** The header: the release, and the square around the origin that may be drawn in, half its side in mm. */
    void header(double half) throws IOException {
        // Release 12 has no variable for the unit; a comment is what it allows.
        group(999, "units: mm; the origin is the centre of the field");
        section("HEADER");
        variable("$ACADVER").group(1, "AC1009");
        variable("$EXTMIN").point(-half, -half);
        variable("$EXTMAX").point(half, half);
        variable("$LIMMIN").group(10, Decimals.mm(-half)).group(20, Decimals.mm(-half));
        variable("$LIMMAX").group(10, Decimals.mm(half)).group(20, Decimals.mm(half));
        endSection();
    }

    /** The tables: one line type, and the layers. */
    void layers(List<DxfLayer> layers) throws IOException {
        section("TABLES");
        group(0, "TABLE").group(2, "LTYPE").group(70, "1");
        group(0, "LTYPE").group(2, "CONTINUOUS").group(70, "0").group(3, "Solid line");
        group(72, "65").group(73, "0").group(40, "0").group(0, "ENDTAB");
        group(0, "TABLE").group(2, "LAYER").group(70, Integer.toString(layers.size()));
        for (DxfLayer layer : layers) {
            group(0, "LAYER").group(2, layer.name()).group(70, "0");
            group(62, Integer.toString(layer.colour())).group(6, "CONTINUOUS");
        }
        group(0, "ENDTAB");
        endSection();
    }

    void section(String name) {
        group(0, "SECTION").group(2, name);
    }

    void endSection() throws IOException {
        group(0, "ENDSEC");
        flush();
    }

    /** A polyline of two points or more. */
    void polyline(DxfLayer layer, Polyline line, boolean closed) throws IOException {
        entity("POLYLINE", layer).group(66, "1").point(0, 0);
        group(70, Integer.toString(closed ? CLOSED : 0));
        for (int i = 0; i < line.size(); i++) {
            entity("VERTEX", layer).point(line.x(i), line.y(i));
        }
        entity("SEQEND", layer);
        flushIfFull();
    }

    /** A place where the beam is on without moving. */
    void dot(DxfLayer layer, double x, double y) throws IOException {
        entity("POINT", layer).point(x, y);
        flushIfFull();
    }

    /** Ends the file and hands its last bytes to the stream. */
    void end() throws IOException {
        group(0, "EOF");
        flush();
        out.flush();
    }

    private DxfWriter variable(String name) {
        return group(9, name);
    }

    private DxfWriter entity(String type, DxfLayer layer) {
        return group(0, type).group(8, layer.name());
    }

    private DxfWriter point(double x, double y) {
        return group(10, Decimals.mm(x)).group(20, Decimals.mm(y)).group(30, "0");
    }

    private DxfWriter group(int code, String value) {
        text.append(code).append('\n').append(value).append('\n');
        return this;
    }

    private void flushIfFull() throws IOException {
        if (text.length() >= FLUSH_AT) {
            flush();
        }
    }

    private void flush() throws IOException {
        out.write(text.toString().getBytes(StandardCharsets.US_ASCII));
        text.setLength(0);
    }
}
