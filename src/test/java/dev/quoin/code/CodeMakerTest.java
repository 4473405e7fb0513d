package dev.quoin.code;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.LuminanceSource;
import com.google.zxing.MultiFormatReader;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.datamatrix.decoder.Decoder;
import dev.quoin.geometry.Box;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Given a content and a rectangle, then this code, which decoders read back, or this refusal. */
class CodeMakerTest {
    private static final Map<CodeKind, BarcodeFormat> FORMATS = Map.of(
            CodeKind.DATA_MATRIX, BarcodeFormat.DATA_MATRIX,
            CodeKind.GS1_DATA_MATRIX, BarcodeFormat.DATA_MATRIX,
            CodeKind.QR, BarcodeFormat.QR_CODE,
            CodeKind.CODE_128, BarcodeFormat.CODE_128,
            CodeKind.CODE_39, BarcodeFormat.CODE_39,
            CodeKind.EAN_13, BarcodeFormat.EAN_13,
            CodeKind.UPC_A, BarcodeFormat.UPC_A);

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "datamatrix,Tom & Jo 0042,12,12",
        "datamatrix,SN-0001234567,24,8",
        "datamatrix,Zoë,12,12",
        "datamatrix,Žofie Łukasz,16,16",
        "qr,https://example.org/t/0042?a=1&b=2,20,20",
        "qr,Žofie 三上,20,20",
        "code128,PJJ123C,40,10",
        "code128,Tag 0042/b,50,8",
        "code39,TAG-0042 $/+%.,60,10",
        "ean13,629104150021,30,12",
        "upca,72527273070,30,12",
        "gs1-datamatrix,(01)09501101530003(17)140704(10)AB-123,14,14",
        "gs1-datamatrix,(10)LOT7(21)SN-5(91)x,30,12",
    })
    void aDecoderReadsWhatWasEncoded(String kind, String content, double width, double height) throws Exception {
        for (boolean inverted : new boolean[] {false, true}) {
            MadeCode code = made(kind, content, width, height, inverted);
            String read = decode(Pictures.of(code, width, height, inverted), code, kind);
            // The reader puts a separator for the FNC1 that stands first.
            String expected = kind.startsWith("gs1") ? ElementString.SEPARATOR + code.encoded() : code.encoded();
            assertEquals(expected, read);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "Tom & Jo 0042,12,12",
        "SN-0001234567,24,8",
        "A,8,8",
        "0123456789012345678901234567890123456789,15,15",
        "SN-000123456789,30,8"
    })
    void dmtxreadReadsTheDataMatrix(String content, double width, double height) {
        MadeCode code = made("datamatrix", content, width, height, false);
        assertEquals(content, Pictures.read(Pictures.of(code, width, height, false), folder, "dmtxread", "-n", "-N1"));
    }

    @ParameterizedTest
    @CsvSource({
        "(01)09501101530003(17)140704(10)AB-123,01095011015300031714070410AB-123,14,14",
        "(10)LOT7(21)SN-5,10LOT7<GS>21SN-5,30,10",
    })
    void dmtxreadReadsTheGs1ElementString(String content, String transmitted, double width, double height) {
        MadeCode code = made("gs1-datamatrix", content, width, height, false);
        String read =
                Pictures.read(Pictures.of(code, width, height, false), folder, "dmtxread", "-n", "-N1", "-G", "29");
        assertEquals("<GS>" + transmitted, read.replace("\u001D", "<GS>"));
    }

    @ParameterizedTest
    @CsvSource({
        "qr,QR-Code,https://example.org/t/0042,20,20",
        "code128,CODE-128,PJJ123C,40,10",
        "code39,CODE-39,TAG-0042,60,10",
        "ean13,EAN-13,6291041500213,30,12",
        "upca,EAN-13,725272730706,30,12",
    })
    void zbarimgReadsTheOthers(String kind, String named, String content, double width, double height) {
        MadeCode code = made(kind, content, width, height, false);
        String read = Pictures.read(Pictures.of(code, width, height, false), folder, "zbarimg", "-q");
        // As EAN-13, a UPC-A number has a 0 before it.
        assertEquals(named + ":" + (kind.equals("upca") ? "0" : "") + content, read);
    }

    @Test
    void aHundredSerialNumbersAreReadBackFromEachMatrixCode() throws Exception {
        Random random = new Random(7);
        for (int i = 0; i < 100; i++) {
            String content = "SN-" + Long.toString(random.nextLong() >>> random.nextInt(50), 36);
            for (String kind : List.of("datamatrix", "qr")) {
                MadeCode code = made(kind, content, 14, 14, false);
                assertEquals(content, decode(Pictures.of(code, 14, 14, false), code, kind));
            }
        }
    }

    @Test
    void theQuietZoneLiesInsideTheRectangle() {
        // Data Matrix: GS1 DataMatrix Guideline 2.5.1, 1 module; QR: ISO/IEC 18004, 4 modules.
        for (String kind : List.of("datamatrix", "qr")) {
            int quiet = kind.equals("qr") ? 4 : 1;
            MadeCode code = made(kind, "0042", 12, 10, false);
            assertEquals(10.0 / (code.rows() + 2 * quiet), code.moduleMm(), 1e-12);
            Box ink = code.area().outline().bounds();
            assertEquals(code.columns() * code.moduleMm(), ink.width(), 1e-9);
            assertEquals(0, ink.centre().x(), 1e-9);
            assertEquals(0, ink.centre().y(), 1e-9);
            Box inverted = made(kind, "0042", 12, 10, true).area().outline().bounds();
            assertEquals(10, inverted.height(), 1e-9);
        }
        MadeCode linear = made("code128", "0042", 30, 8, false);
        assertEquals(
                30 - 20 * linear.moduleMm(), linear.area().outline().bounds().width(), 1e-9);
        assertEquals(8, linear.area().outline().bounds().height(), 1e-9);
    }

    @Test
    void theShapeFollowsTheRectanglesProportion() {
        MadeCode square = made("datamatrix", "SN-00012345", 10, 10, false);
        MadeCode wide = made("datamatrix", "SN-00012345", 24, 8, false);
        assertEquals(square.columns(), square.rows());
        assertTrue(wide.columns() > 2 * wide.rows());
        assertTrue(wide.moduleMm() > 8.0 / (square.rows() + 2), "larger modules than the square symbol's");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "code39|Tag|Code 39 cannot hold 'a' of 'Tag'",
                "code128|Zoë|Code 128 cannot hold 'ë' of 'Zoë'",
                "ean13|6291041500214|EAN-13 '6291041500214' ends in 4, its check digit is 3",
                "ean13|12345|EAN-13 '12345' is not 12 or 13 digits",
                "upca|0725272730a|UPC-A '0725272730a' is not 11 or 12 digits",
                "gs1-datamatrix|0109501101530003|'0109501101530003' is not written as GS1 elements",
                "gs1-datamatrix|(01)09501101530004|GS1 element (01) '09501101530004' ends in 4, its check digit is 3",
                "gs1-datamatrix|(01)9501101530003|GS1 element (01) '9501101530003' is not 14 digits",
                "gs1-datamatrix|(17)141304|GS1 element (17) '141304' is not a date YYMMDD",
                "gs1-datamatrix|(17)230229|GS1 element (17) '230229' is not a date YYMMDD",
                "gs1-datamatrix|(10)ä|GS1 element (10) 'ä' is not 1 to 20 characters of GS1's set",
                "gs1-datamatrix|(0999)5|unknown GS1 application identifier (0999)",
                "qr|''|a code of no content",
            })
    void whatTheCodeCannotHoldIsRefused(String kind, String content, String message) {
        RefusedCode refused = assertInstanceOf(
                RefusedCode.class, CodeMaker.make(CodeKind.of(kind).orElseThrow(), content, 20, 20, false));
        assertEquals(message, refused.message());
        assertTrue(!refused.remedy().isEmpty());
    }

    @ParameterizedTest
    @CsvSource({"datamatrix,4000", "qr,4000", "code128,81", "code39,81"})
    void tooLongAContentIsRefused(String kind, int length) {
        String content = "A1".repeat(length);
        assertInstanceOf(RefusedCode.class, CodeMaker.make(CodeKind.of(kind).orElseThrow(), content, 20, 20, false));
    }

    private static MadeCode made(String kind, String content, double width, double height, boolean inverted) {
        CodeResult result = CodeMaker.make(CodeKind.of(kind).orElseThrow(), content, width, height, inverted);
        return assertInstanceOf(MadeCode.class, result, result::toString);
    }

    /** ZXing's decoders. Its finder of Data Matrix misses clean pictures, so there modules are sampled at their centres. */
    private static String decode(BufferedImage image, MadeCode code, String kind) throws Exception {
        BarcodeFormat format = FORMATS.get(CodeKind.of(kind).orElseThrow());
        if (format == BarcodeFormat.DATA_MATRIX) {
            return new Decoder().decode(Pictures.modules(image, code)).getText();
        }
        int width = image.getWidth();
        int height = image.getHeight();
        LuminanceSource source =
                new RGBLuminanceSource(width, height, image.getRGB(0, 0, width, height, null, 0, width));
        return new MultiFormatReader()
                .decode(
                        new BinaryBitmap(new HybridBinarizer(source)),
                        Map.of(DecodeHintType.POSSIBLE_FORMATS, List.of(format), DecodeHintType.TRY_HARDER, true))
                .getText();
    }
}
