package dev.quoin.code;

import com.google.zxing.Dimension;
import com.google.zxing.datamatrix.encoder.DefaultPlacement;
import com.google.zxing.datamatrix.encoder.ErrorCorrection;
import com.google.zxing.datamatrix.encoder.SymbolInfo;
import com.google.zxing.datamatrix.encoder.SymbolShapeHint;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Data Matrix symbols in ASCII encodation (ISO/IEC 16022:2006, 5.2.3), for what the library's plain encoder cannot say:
 * FNC1 and UTF-8. Its other encoder, which can, was seen to lose track of its last codewords.
 */
final class DataMatrixCodewords {
    private static final int FNC1 = 232;
    private static final int UPPER_SHIFT = 235;
    private static final int ECI = 241;
    private static final int UTF_8 = 26;
    private static final int PAD = 129;
    private static final int FIRST_PAIR = 130;

    private final StringBuilder codewords = new StringBuilder();

    private DataMatrixCodewords() {}

    /** A GS1 element string: FNC1 first, and for each separator. */
    static DataMatrixCodewords gs1(String transmitted) {
        DataMatrixCodewords made = new DataMatrixCodewords();
        made.codewords.append((char) FNC1);
        made.append(transmitted.getBytes(StandardCharsets.US_ASCII), true);
        return made;
    }

    /** Any text, marked as UTF-8 (extended channel interpretation 26). */
    static DataMatrixCodewords utf8(String text) {
        DataMatrixCodewords made = new DataMatrixCodewords();
        made.codewords.append((char) ECI).append((char) (UTF_8 + 1));
        made.append(text.getBytes(StandardCharsets.UTF_8), false);
        return made;
    }

    /** The modules of the smallest symbol of a shape that holds the codewords, and of this size if one is given. */
    Optional<ModuleGrid> grid(SymbolShapeHint shape, Optional<Dimension> size) {
        SymbolInfo symbol = SymbolInfo.lookup(codewords.length(), shape, size.orElse(null), size.orElse(null), false);
        return Optional.ofNullable(symbol).map(this::grid);
    }

    private void append(byte[] bytes, boolean separators) {
        for (int i = 0; i < bytes.length; i++) {
            int value = Byte.toUnsignedInt(bytes[i]);
            if (i + 1 < bytes.length && isDigit(value) && isDigit(bytes[i + 1])) {
                codewords.append((char) (FIRST_PAIR + 10 * (value - '0') + bytes[i + 1] - '0'));
                i++;
            } else if (separators && value == ElementString.SEPARATOR) {
                codewords.append((char) FNC1);
            } else if (value >= 0x80) {
                codewords.append((char) UPPER_SHIFT).append((char) (value - 0x80 + 1));
            } else {
                codewords.append((char) (value + 1));
            }
        }
    }

    private static boolean isDigit(int value) {
        return value >= '0' && value <= '9';
    }

    private ModuleGrid grid(SymbolInfo symbol) {
        String all = ErrorCorrection.encodeECC200(padded(symbol.getDataCapacity()), symbol);
        DefaultPlacement placement =
                new DefaultPlacement(all, symbol.getSymbolDataWidth(), symbol.getSymbolDataHeight());
        placement.place();
        return ModuleGrid.of(
                symbol.getSymbolWidth(),
                symbol.getSymbolHeight(),
                (column, row) -> isDark(column, row, symbol, placement));
    }

    /** Each data region has a border: solid on the left and below, alternating above and on the right (5.7). */
    private static boolean isDark(int column, int row, SymbolInfo symbol, DefaultPlacement placement) {
        int wide = symbol.matrixWidth + 2;
        int high = symbol.matrixHeight + 2;
        int x = column % wide;
        int y = row % high;
        if (x == 0 || y == high - 1) {
            return true;
        }
        if (y == 0) {
            return x % 2 == 0;
        }
        if (x == wide - 1) {
            return y % 2 == 1;
        }
        return placement.getBit(column / wide * symbol.matrixWidth + x - 1, row / high * symbol.matrixHeight + y - 1);
    }

    /** Filled up by the 253-state algorithm (annex B.1). */
    private String padded(int capacity) {
        StringBuilder full = new StringBuilder(codewords);
        if (full.length() < capacity) {
            full.append((char) PAD);
        }
        while (full.length() < capacity) {
            int value = PAD + 149 * (full.length() + 1) % 253 + 1;
            full.append((char) (value <= 254 ? value : value - 254));
        }
        return full.toString();
    }
}
