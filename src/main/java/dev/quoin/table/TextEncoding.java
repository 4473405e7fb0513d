package dev.quoin.table;

import java.io.ByteArrayInputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * How the bytes of a file stand for characters, found by looking at them: a byte order mark decides; without one, NULs
 * on every other byte mean UTF-16, valid UTF-8 is UTF-8, and the rest is Windows-1252.
 *
 * @param mark how many bytes the byte order mark takes
 * @param assumed whether nothing in the file proves it
 * @param sound whether every byte is known to be part of a character
 */
record TextEncoding(Charset charset, int mark, boolean assumed, boolean sound) {
    private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");
    private static final int SAMPLE = 4096;

    static TextEncoding of(byte[] content) {
        if (startsWith(content, 0xFF, 0xFE)) {
            return new TextEncoding(StandardCharsets.UTF_16LE, 2, false, false);
        }
        if (startsWith(content, 0xFE, 0xFF)) {
            return new TextEncoding(StandardCharsets.UTF_16BE, 2, false, false);
        }
        int evenNuls = nuls(content, 0);
        int oddNuls = nuls(content, 1);
        int half = Math.min(content.length, SAMPLE) / 2;
        if (oddNuls > half / 2 && evenNuls <= half / 16) {
            return new TextEncoding(StandardCharsets.UTF_16LE, 0, false, false);
        }
        if (evenNuls > half / 2 && oddNuls <= half / 16) {
            return new TextEncoding(StandardCharsets.UTF_16BE, 0, false, false);
        }
        return utf8OrWindows1252(content, startsWith(content, 0xEF, 0xBB, 0xBF));
    }

    /**
     * UTF-8 where it is marked as such, or where more letters beyond ASCII are UTF-8 than not: a damaged UTF-8 file must
     * not pass as Windows-1252, in which nearly every byte is some character.
     */
    private static TextEncoding utf8OrWindows1252(byte[] content, boolean marked) {
        if (isUtf8(content)) {
            return new TextEncoding(StandardCharsets.UTF_8, marked ? 3 : 0, false, true);
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer in = ByteBuffer.wrap(content);
        CharBuffer out = CharBuffer.allocate(SAMPLE);
        long good = 0;
        long bad = 0;
        CoderResult result;
        do {
            result = decoder.decode(in, out, true);
            out.flip();
            while (out.hasRemaining()) {
                good += out.get() >= 0x80 ? 1 : 0;
            }
            out.clear();
            if (result.isMalformed()) {
                bad++;
                in.position(in.position() + result.length());
            }
        } while (!result.isUnderflow());
        return marked || good > bad
                ? new TextEncoding(StandardCharsets.UTF_8, marked ? 3 : 0, false, false)
                : new TextEncoding(WINDOWS_1252, 0, true, false);
    }

    /** Whether it is all UTF-8, as most files are: then no letters need be counted. */
    private static boolean isUtf8(byte[] content) {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer in = ByteBuffer.wrap(content);
        CharBuffer out = CharBuffer.allocate(SAMPLE);
        CoderResult result;
        do {
            result = decoder.decode(in, out.clear(), true);
        } while (result.isOverflow());
        return result.isUnderflow();
    }

    /** The text; what is no character in this encoding comes as U+FFFD. */
    Reader reader(byte[] content) {
        CharsetDecoder decoder = charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPLACE)
                .onUnmappableCharacter(CodingErrorAction.REPLACE);
        return new InputStreamReader(new ByteArrayInputStream(content, mark, content.length - mark), decoder);
    }

    private static int nuls(byte[] content, int from) {
        int count = 0;
        for (int i = from; i < Math.min(content.length, SAMPLE); i += 2) {
            count += content[i] == 0 ? 1 : 0;
        }
        return count;
    }

    private static boolean startsWith(byte[] content, int... start) {
        for (int i = 0; i < start.length; i++) {
            if (i >= content.length || (content[i] & 0xFF) != start[i]) {
                return false;
            }
        }
        return true;
    }
}
