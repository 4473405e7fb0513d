package dev.quoin.code;

import com.google.zxing.oned.Code128Writer;
import com.google.zxing.oned.Code39Writer;
import com.google.zxing.oned.EAN13Writer;
import java.util.function.IntPredicate;

/** Codes of bars. */
final class LinearCodes {
    private static final int MOST_CHARACTERS = 80;
    private static final int QUIET = 10;
    private static final String CODE_39 = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ-. $/+%";

    private LinearCodes() {}

    static Symbol code128(String content) throws RefusalException {
        check(content, "Code 128", "ASCII characters", c -> c < 0x80);
        return new Symbol(bars(new Code128Writer().encode(content)), QUIET, QUIET, 0, content);
    }

    static Symbol code39(String content) throws RefusalException {
        check(content, "Code 39", "capitals, digits, spaces and - . $ / + %", c -> CODE_39.indexOf(c) >= 0);
        return new Symbol(bars(new Code39Writer().encode(content)), QUIET, QUIET, 0, content);
    }

    static Symbol ean13(String content) throws RefusalException {
        String number = CheckDigit.complete(content.strip(), 13, "EAN-13");
        return new Symbol(bars(new EAN13Writer().encode(number)), 11, 7, 0, number);
    }

    /** A UPC-A symbol is the EAN-13 symbol of the same number with a 0 before it. */
    static Symbol upcA(String content) throws RefusalException {
        String number = CheckDigit.complete(content.strip(), 12, "UPC-A");
        return new Symbol(bars(new EAN13Writer().encode("0" + number)), 9, 9, 0, number);
    }

    private static void check(String content, String kind, String allowed, IntPredicate holds) throws RefusalException {
        int[] refused = content.codePoints().filter(holds.negate()).limit(1).toArray();
        if (refused.length > 0) {
            throw new RefusalException(
                    kind + " cannot hold '" + Character.toString(refused[0]) + "' of '" + content + "'",
                    "use only " + allowed + ", or a Data Matrix");
        }
        if (content.length() > MOST_CHARACTERS) {
            throw new RefusalException(
                    kind + " of " + content.length() + " characters, at most " + MOST_CHARACTERS + " are allowed",
                    "shorten it or use a Data Matrix");
        }
    }

    private static ModuleGrid bars(boolean[] modules) {
        return ModuleGrid.of(modules.length, 1, (column, row) -> modules[column]);
    }
}
