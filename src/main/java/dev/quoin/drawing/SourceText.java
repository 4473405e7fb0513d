package dev.quoin.drawing;

import dev.quoin.problem.Place;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The characters of an XML file, and where its lines start. */
final class SourceText {
    private static final Pattern DECLARED =
            Pattern.compile("\\A\\s*<\\?xml[^>]*?encoding\\s*=\\s*[\"']([A-Za-z0-9._-]+)[\"']");
    private static final int DECLARATION_LENGTH = 200;

    private final String file;
    private final String text;
    private final int[] lineStarts;

    private SourceText(String file, String text) {
        this.file = file;
        this.text = text;
        this.lineStarts = lineStarts(text);
    }

    /**
     * Reads the bytes by their byte order mark, or else by the encoding that the file declares, or else as UTF-8.
     *
     * @throws CharacterCodingException if the bytes are not text in that encoding
     * @throws IllegalArgumentException if the encoding is unknown
     */
    static SourceText decode(String file, byte[] bytes) throws CharacterCodingException {
        Charset charset = charset(bytes);
        String text = charset.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
        return new SourceText(file, text.startsWith("\uFEFF") ? text.substring(1) : text);
    }

    String text() {
        return text;
    }

    /** The place of a character. */
    Place place(int offset) {
        int found = Arrays.binarySearch(lineStarts, offset);
        int line = found >= 0 ? found : -found - 2;
        return new Place(file, line + 1, offset - lineStarts[line] + 1);
    }

    /** The place of the tag that ends before a position (from 1) that the parser tells. */
    Place tagThatEnds(int line, int column) {
        return place(tagStart(line, column));
    }

    /** The place of the first occurrence of some text after the start of the tag at a place. */
    Place find(String wanted, Place tag) {
        int at = text.indexOf(wanted, lineStarts[tag.line() - 1] + Math.max(0, tag.column() - 1));
        return at < 0 ? tag : place(at);
    }

    /** No attribute value may hold a {@code <}, so the last one before a tag's end is its start. */
    private int tagStart(int line, int column) {
        int row = Math.max(0, Math.min(line, lineStarts.length) - 1);
        int end = lineStarts[row] + Math.max(0, column - 2);
        return Math.max(0, text.lastIndexOf('<', end));
    }

    private static Charset charset(byte[] bytes) {
        if (bytes.length >= 2) {
            int first = (bytes[0] & 0xFF) << 8 | bytes[1] & 0xFF;
            if (first == 0xFEFF || first == 0x003C) {
                return StandardCharsets.UTF_16BE;
            }
            if (first == 0xFFFE || first == 0x3C00) {
                return StandardCharsets.UTF_16LE;
            }
        }
        int length = Math.min(bytes.length, DECLARATION_LENGTH);
        Matcher declared = DECLARED.matcher(new String(bytes, 0, length, StandardCharsets.ISO_8859_1));
        return declared.find() ? Charset.forName(declared.group(1)) : StandardCharsets.UTF_8;
    }

    private static int[] lineStarts(String text) {
        int[] starts = new int[64];
        int count = 1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean ends = c == '\n' || (c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n'));
            if (ends) {
                starts = count == starts.length ? Arrays.copyOf(starts, 2 * count) : starts;
                starts[count++] = i + 1;
            }
        }
        return Arrays.copyOf(starts, count);
    }
}
