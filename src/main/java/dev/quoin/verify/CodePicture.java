package dev.quoin.verify;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.MultiFormatReader;
import com.google.zxing.NotFoundException;
import com.google.zxing.PlanarYUVLuminanceSource;
import com.google.zxing.common.GlobalHistogramBinarizer;
import dev.quoin.code.CodeKind;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A mark drawn as a picture, for a decoder of codes that knows nothing of how it was made. */
final class CodePicture {
    private static final double PIXELS_A_MODULE = 6;
    private static final int QUIET_MODULES = 10;
    private static final int MOST_PIXELS = 4_000;

    private final Path mark;
    private final double module;

    /**
     * A picture of a mark.
     *
     * @param mark around the item's centre, mm, y up
     * @param module the width of a module, mm
     */
    CodePicture(Path mark, double module) {
        this.mark = mark;
        this.module = module;
    }

    /** What a decoder reads from it, dark on light or light on dark; nothing if it reads nothing. */
    Optional<String> read(CodeKind kind) {
        return read(kind, false).or(() -> read(kind, true));
    }

    private Optional<String> read(CodeKind kind, boolean inverted) {
        Box box = mark.bounds();
        double scale = PIXELS_A_MODULE / module;
        int quiet = (int) (QUIET_MODULES * PIXELS_A_MODULE);
        int width = (int) Math.ceil(box.width() * scale) + 2 * quiet;
        int height = (int) Math.ceil(box.height() * scale) + 2 * quiet;
        if (box.isEmpty() || width > MOST_PIXELS || height > MOST_PIXELS) {
            return Optional.empty();
        }
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D graphics = image.createGraphics();
        Affine toPixels = new Affine(
                scale,
                0,
                0,
                -scale,
                width / 2.0 - box.centre().x() * scale,
                height / 2.0 + box.centre().y() * scale);
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, width, height);
        graphics.setColor(Color.BLACK);
        if (inverted) {
            graphics.fill(Path.of(box).transform(toPixels).toShape(FillRule.EVEN_ODD));
            graphics.setColor(Color.WHITE);
        }
        graphics.fill(mark.transform(toPixels).toShape(FillRule.EVEN_ODD));
        graphics.dispose();
        return decode(image, kind);
    }

    private static Optional<String> decode(BufferedImage image, CodeKind kind) {
        byte[] grey = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
        int width = image.getWidth();
        int height = image.getHeight();
        BinaryBitmap bitmap = new BinaryBitmap(new GlobalHistogramBinarizer(
                new PlanarYUVLuminanceSource(grey, width, height, 0, 0, width, height, false)));
        for (DecodeHintType how : List.of(DecodeHintType.PURE_BARCODE, DecodeHintType.TRY_HARDER)) {
            try {
                String text = new MultiFormatReader()
                        .decode(
                                bitmap,
                                Map.of(DecodeHintType.POSSIBLE_FORMATS, List.of(format(kind)), how, Boolean.TRUE))
                        .getText();
                return Optional.of(kind == CodeKind.GS1_DATA_MATRIX ? withoutFirstSeparator(text) : text);
            } catch (NotFoundException notReadSo) {
                continue;
            }
        }
        return Optional.empty();
    }

    /** The decoder gives the sign that begins GS1 data as a separator. */
    private static String withoutFirstSeparator(String text) {
        return text.startsWith("\u001D") ? text.substring(1) : text;
    }

    private static BarcodeFormat format(CodeKind kind) {
        return switch (kind) {
            case DATA_MATRIX, GS1_DATA_MATRIX -> BarcodeFormat.DATA_MATRIX;
            case QR -> BarcodeFormat.QR_CODE;
            case CODE_128 -> BarcodeFormat.CODE_128;
            case CODE_39 -> BarcodeFormat.CODE_39;
            case EAN_13 -> BarcodeFormat.EAN_13;
            case UPC_A -> BarcodeFormat.UPC_A;
        };
    }
}
