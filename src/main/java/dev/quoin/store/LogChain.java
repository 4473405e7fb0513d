package dev.quoin.store;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;

/**
 * The check at the end of each line of the record: the first eight hexadecimal digits of the SHA-256 of the check before
 * it and of the line itself. It tells a line that was changed from one that a kill cut short, since the line after the
 * latter goes on from the last whole one.
 */
final class LogChain {
    static final String START = "";
    private static final int DIGITS = 8;

    private LogChain() {}

    /** The check of a line, given without it. */
    static String check(String previous, String body) {
        byte[] hash = HashedFile.sha256().digest((previous + "\n" + body).getBytes(StandardCharsets.UTF_8));
        return HexFormat.of().formatHex(hash).substring(0, DIGITS);
    }

    /** The line with its check. */
    static String sealed(String previous, String body) {
        return body + "," + check(previous, body);
    }

    /** Whether a line goes on from this check. */
    static boolean follows(String previous, String line) {
        int comma = line.lastIndexOf(',');
        return comma >= 0 && line.equals(sealed(previous, line.substring(0, comma)));
    }

    /** The check that a line bears. */
    static String stated(String line) {
        return line.substring(line.lastIndexOf(',') + 1);
    }

    /** The check that a line ought to bear after this one. */
    static String computed(String previous, String line) {
        return check(previous, line.substring(0, Math.max(0, line.lastIndexOf(','))));
    }
}
