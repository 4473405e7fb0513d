package dev.quoin.code;

import dev.quoin.geometry.Area;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;

/**
 * Draws codes, as large as their rectangle allows, the quiet zone inside it:
 *
 * <ul>
 *   <li>Data Matrix and GS1 DataMatrix: 1 module (GS1 DataMatrix Guideline, 2.5.1)
 *   <li>QR Code: 4 modules (ISO/IEC 18004)
 *   <li>Code 128 and Code 39: 10 modules on the left and the right (from memory)
 *   <li>EAN-13: 11 modules on the left, 7 on the right; UPC-A: 9 on both (from memory)
 * </ul>
 *
 * <p>A matrix code keeps its modules square and stands in the middle; the bars of a linear code are as high as the
 * rectangle. This is geometry only: a mark's contrast and quality are graded on the piece (ISO/IEC 29158), not here.
 */
public final class CodeMaker {
    private CodeMaker() {}

    /**
     * Makes a code.
     *
     * @param content what it says; GS1 element strings with their identifiers in brackets, {@code (01)09501101530003}
     * @param widthMm of the rectangle, above 0
     * @param heightMm of the rectangle, above 0
     * @param inverted whether light modules and the quiet zone are marked, for light marks on dark blanks
     */
    public static CodeResult make(CodeKind kind, String content, double widthMm, double heightMm, boolean inverted) {
        try {
            if (content.isEmpty()) {
                throw new RefusalException("a code of no content", "fill the cell or leave the code out");
            }
            return draw(symbol(kind, content, widthMm, heightMm), widthMm, heightMm, inverted);
        } catch (RefusalException refused) {
            return refused.refusal();
        }
    }

    private static Symbol symbol(CodeKind kind, String content, double widthMm, double heightMm)
            throws RefusalException {
        return switch (kind) {
            case DATA_MATRIX -> MatrixCodes.dataMatrix(content, widthMm, heightMm);
            case GS1_DATA_MATRIX -> MatrixCodes.gs1DataMatrix(ElementString.parse(content), widthMm, heightMm);
            case QR -> MatrixCodes.qr(content);
            case CODE_128 -> LinearCodes.code128(content);
            case CODE_39 -> LinearCodes.code39(content);
            case EAN_13 -> LinearCodes.ean13(content);
            case UPC_A -> LinearCodes.upcA(content);
        };
    }

    private static MadeCode draw(Symbol symbol, double widthMm, double heightMm, boolean inverted) {
        double module = symbol.module(widthMm, heightMm);
        ModuleGrid whole = symbol.withQuietZone();
        ModuleGrid marked = inverted ? whole.inverted() : whole;
        Path outline = marked.outline(module, symbol.isLinear() ? heightMm : module);
        return new MadeCode(
                new Area(outline, FillRule.NON_ZERO),
                module,
                symbol.grid().columns(),
                symbol.grid().rows(),
                symbol.encoded());
    }
}
