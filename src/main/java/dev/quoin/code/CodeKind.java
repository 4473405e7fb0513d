package dev.quoin.code;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The kinds of code that can be drawn. */
public enum CodeKind {
    /** Data Matrix ECC 200 (ISO/IEC 16022). */
    DATA_MATRIX("datamatrix"),
    /** QR Code (ISO/IEC 18004), error correction level M. */
    QR("qr"),
    /** Code 128 (ISO/IEC 15417). */
    CODE_128("code128"),
    /** Code 39 (ISO/IEC 16388), without a check character. */
    CODE_39("code39"),
    /** EAN-13 (ISO/IEC 15420). */
    EAN_13("ean13"),
    /** UPC-A (ISO/IEC 15420). */
    UPC_A("upca"),
    /** Data Matrix that holds GS1 element strings (GS1 General Specifications). */
    GS1_DATA_MATRIX("gs1-datamatrix");

    private final String word;

    CodeKind(String word) {
        this.word = word;
    }

    /** What a template calls it. */
    public String word() {
        return word;
    }

    /** The kind that a template calls so. */
    public static Optional<CodeKind> of(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
    }

    /** What templates call all of them, for messages. */
    public static List<String> words() {
        return Arrays.stream(values()).map(CodeKind::word).toList();
    }
}
