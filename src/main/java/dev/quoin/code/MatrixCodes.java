package dev.quoin.code;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.Dimension;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.datamatrix.DataMatrixWriter;
import com.google.zxing.datamatrix.encoder.SymbolShapeHint;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Codes of square modules. */
final class MatrixCodes {
    private static final int DATA_MATRIX_QUIET = 1;
    private static final int QR_QUIET = 4;
    /** Under this proportion no rectangular symbol has larger modules than the square one. */
    private static final double OBLONG = 1.25;

    /** Square symbols; and the rectangular sizes of ISO/IEC 16022, table 7: columns, rows. */
    private static final List<Shape> SHAPES = List.of(
            new Shape(SymbolShapeHint.FORCE_SQUARE, Optional.empty()),
            Shape.rectangle(18, 8),
            Shape.rectangle(32, 8),
            Shape.rectangle(26, 12),
            Shape.rectangle(36, 12),
            Shape.rectangle(36, 16),
            Shape.rectangle(48, 16));

    private MatrixCodes() {}

    /** Text beyond Latin-1 is held as UTF-8. */
    static Symbol dataMatrix(String content, double widthMm, double heightMm) throws RefusalException {
        if (StandardCharsets.ISO_8859_1.newEncoder().canEncode(content)) {
            return largest(shape -> encode(content, shape), content, widthMm, heightMm);
        }
        DataMatrixCodewords codewords = DataMatrixCodewords.utf8(content);
        return largest(shape -> codewords.grid(shape.hint(), shape.size()), content, widthMm, heightMm);
    }

    static Symbol gs1DataMatrix(ElementString elements, double widthMm, double heightMm) throws RefusalException {
        DataMatrixCodewords codewords = DataMatrixCodewords.gs1(elements.transmitted());
        return largest(shape -> codewords.grid(shape.hint(), shape.size()), elements.transmitted(), widthMm, heightMm);
    }

    static Symbol qr(String content) throws RefusalException {
        Map<EncodeHintType, Object> hints = new EnumMap<>(EncodeHintType.class);
        if (!StandardCharsets.US_ASCII.newEncoder().canEncode(content)) {
            // Readers guess where nothing is said, and guess differently.
            hints.put(EncodeHintType.CHARACTER_SET, StandardCharsets.UTF_8.name());
        }
        try {
            ByteMatrix matrix =
                    Encoder.encode(content, ErrorCorrectionLevel.M, hints).getMatrix();
            ModuleGrid grid = ModuleGrid.of(matrix.getWidth(), matrix.getHeight(), (x, y) -> matrix.get(x, y) == 1);
            return Symbol.matrix(grid, QR_QUIET, content);
        } catch (WriterException tooLong) {
            throw tooLong("a QR Code", content);
        }
    }

    /** The symbol with the largest modules: a square one, or a rectangular one where the space is oblong. */
    private static Symbol largest(Maker maker, String encoded, double widthMm, double heightMm)
            throws RefusalException {
        Stream<Shape> shapes =
                widthMm > OBLONG * heightMm ? SHAPES.stream() : SHAPES.stream().limit(1);
        return shapes.flatMap(shape -> maker.grid(shape).stream())
                .map(grid -> Symbol.matrix(grid, DATA_MATRIX_QUIET, encoded))
                .max(Comparator.comparingDouble(symbol -> symbol.module(widthMm, heightMm)))
                .orElseThrow(() -> tooLong("a Data Matrix", encoded));
    }

    /** The modules, or nothing where the content does not fit the shape. */
    private static Optional<ModuleGrid> encode(String text, Shape shape) {
        Map<EncodeHintType, Object> hints = new EnumMap<>(EncodeHintType.class);
        hints.put(EncodeHintType.DATA_MATRIX_SHAPE, shape.hint());
        shape.size().ifPresent(size -> {
            hints.put(EncodeHintType.MIN_SIZE, size);
            hints.put(EncodeHintType.MAX_SIZE, size);
        });
        try {
            BitMatrix matrix = new DataMatrixWriter().encode(text, BarcodeFormat.DATA_MATRIX, 0, 0, hints);
            return Optional.of(ModuleGrid.of(matrix.getWidth(), matrix.getHeight(), matrix::get));
        } catch (IllegalArgumentException | IllegalStateException tooLong) {
            // The encoder's way to say that no symbol of this shape holds so much.
            return Optional.empty();
        }
    }

    private static RefusalException tooLong(String kind, String content) {
        return new RefusalException(
                "a content of " + content.length() + " characters is too long for " + kind, "shorten it");
    }

    /** Makes the modules of a shape, if they fit. */
    private interface Maker {
        Optional<ModuleGrid> grid(Shape shape);
    }

    /** A kind of symbol, and its one size if it has one. */
    private record Shape(SymbolShapeHint hint, Optional<Dimension> size) {
        static Shape rectangle(int columns, int rows) {
            return new Shape(SymbolShapeHint.FORCE_RECTANGLE, Optional.of(new Dimension(columns, rows)));
        }
    }
}
