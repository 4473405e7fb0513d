package dev.quoin.drawing;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Decimals;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** A growing row of bytes that XML and numbers are written into. */
final class SvgBytes {
    private byte[] bytes = new byte[1 << 17];
    private int size;

    int size() {
        return size;
    }

    void drainTo(OutputStream out) throws IOException {
        out.write(bytes, 0, size);
        size = 0;
    }

    /** ASCII, as it stands. */
    @SuppressWarnings("deprecation") // The one way to copy ASCII without a second array.
    SvgBytes raw(String ascii) {
        reserve(ascii.length());
        ascii.getBytes(0, ascii.length(), bytes, size);
        size += ascii.length();
        return this;
    }

    SvgBytes raw(char ascii) {
        reserve(1);
        bytes[size++] = (byte) ascii;
        return this;
    }

    /** A coordinate, at most 3 decimals. */
    SvgBytes number(double value) {
        return raw(Decimals.mm(value));
    }

    /** A character, and the two coordinates of a point. */
    SvgBytes point(char before, double x, double y) {
        reserve(2 + 2 * Decimals.MOST_BYTES);
        size = point(bytes, size, before, Affine.IDENTITY, x, y);
        return this;
    }

    /** Moves and lines in turn, the points at {@code xy[from]} to {@code xy[to]} moved on the way. */
    SvgBytes segments(double[] xy, int from, int to, Affine move) {
        for (int i = from; i < to; i += 4) {
            reserve(4 + 4 * Decimals.MOST_BYTES);
            byte[] all = bytes;
            int end = point(all, size, 'M', move, xy[i], xy[i + 1]);
            size = point(all, end, 'L', move, xy[i + 2], xy[i + 3]);
        }
        return this;
    }

    private static int point(byte[] bytes, int at, char before, Affine move, double x, double y) {
        int end = Decimals.coordinate(bytes, at, before, move.x(x, y));
        return Decimals.coordinate(bytes, end, ' ', move.y(x, y));
    }

    SvgBytes attribute(String name, String value) {
        raw(' ').raw(name).raw("=\"");
        byte[] escaped = escape(value).getBytes(StandardCharsets.UTF_8);
        reserve(escaped.length);
        System.arraycopy(escaped, 0, bytes, size, escaped.length);
        size += escaped.length;
        return raw('"');
    }

    /** @throws IllegalArgumentException if a value is missing */
    SvgBytes attributes(String... namesAndValues) {
        if (namesAndValues.length % 2 != 0) {
            throw new IllegalArgumentException("an attribute without a value");
        }
        for (int i = 0; i < namesAndValues.length; i += 2) {
            attribute(namesAndValues[i], namesAndValues[i + 1]);
        }
        return this;
    }

    /** What XML 1.0 (section 2.2) allows in no form becomes U+FFFD. */
    static String escape(String value) {
        StringBuilder escaped = new StringBuilder(value.length());
        value.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                case '\t', '\n', '\r' -> escaped.append("&#").append(c).append(';');
                default -> escaped.appendCodePoint(isXml(c) ? c : 0xFFFD);
            }
        });
        return escaped.toString();
    }

    private static boolean isXml(int c) {
        return c >= 0x20 && !(c >= 0xD800 && c <= 0xDFFF) && c != 0xFFFE && c != 0xFFFF;
    }

    private void reserve(int more) {
        if (size + more > bytes.length) {
            bytes = Arrays.copyOf(bytes, Math.max(2 * bytes.length, size + more));
        }
    }
}
