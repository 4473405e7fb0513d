package dev.quoin.code;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.google.zxing.datamatrix.encoder.DefaultPlacement;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The worked examples of the standards, module by module. */
class StandardExamplesTest {
    /** ISO/IEC 16022:2006, annex O: 123456 is 142 164 186, check 114 25 5 88 102, in 10 x 10 modules. */
    @Test
    void dataMatrix() throws RefusalException {
        String codewords = new String(new int[] {142, 164, 186, 114, 25, 5, 88, 102}, 0, 8);
        DefaultPlacement placement = new DefaultPlacement(codewords, 8, 8);
        placement.place();
        ModuleGrid grid = MatrixCodes.dataMatrix("123456", 10, 10).grid();
        assertEquals(10, grid.columns());
        assertEquals(10, grid.rows());
        for (int i = 0; i < 10; i++) {
            assertEquals(i % 2 == 0, grid.isDark(i, 0), "the upper edge alternates");
            assertEquals(i % 2 == 1, grid.isDark(9, i), "the right edge alternates");
            assertEquals(true, grid.isDark(0, i), "the left edge is solid");
            assertEquals(true, grid.isDark(i, 9), "the lower edge is solid");
        }
        for (int row = 0; row < 8; row++) {
            for (int column = 0; column < 8; column++) {
                assertEquals(placement.getBit(column, row), grid.isDark(column + 1, row + 1), column + "," + row);
            }
        }
    }

    /** ISO/IEC 18004:2015, annex I: 01234567 as version 1-M, 16 data and 10 check codewords. */
    @Test
    void qrCode() throws RefusalException {
        ModuleGrid grid = MatrixCodes.qr("01234567").grid();
        assertEquals(21, grid.columns());
        assertEquals(
                "10200c566180ec11ec11ec11ec11ec11" + "a524d4c1ed36c7872c55",
                HexFormat.of().formatHex(qrCodewords(grid)));
    }

    /**
     * Code 128: PJJ123C gives the check character 54 where it starts in code set A (value 103). Set B starts with 104, so
     * that the sum 104 + 1*48 + 2*42 + 3*42 + 4*17 + 5*18 + 6*19 + 7*35 = 879 leaves 55 when divided by 103, the value of
     * the letter W in set B.
     */
    @Test
    void code128() throws RefusalException {
        ModuleGrid example = LinearCodes.code128("PJJ123C").grid();
        ModuleGrid letter = LinearCodes.code128("W").grid();
        assertEquals(character(letter, 1), character(example, 8));
    }

    /** GS1's own pages on check digits. */
    @ParameterizedTest
    @CsvSource({"629104150021,3", "730001100001,7"})
    void gs1CheckDigit(String digits, char check) {
        assertEquals(check, CheckDigit.of(digits));
    }

    /** GS1 General Specifications: brackets are for people; the date's length is known, the lot stands last. */
    @ParameterizedTest
    @CsvSource({
        "(01)09501101530003(17)140704(10)AB-123,01095011015300031714070410AB-123",
        "(10)AB-123(17)140704,10AB-123<GS>17140704",
        "(10)A(21)B,10A<GS>21B",
        "(3102)000123(422)056(91)(x),3102000123422056<GS>91(x)",
    })
    void gs1ElementString(String written, String transmitted) throws RefusalException {
        assertEquals(transmitted, ElementString.parse(written).transmitted().replace("\u001D", "<GS>"));
    }

    private static String character(ModuleGrid grid, int index) {
        List<String> widths = new ArrayList<>();
        int run = 0;
        for (int i = 11 * index; i < 11 * index + 11; i++) {
            run++;
            if (i == 11 * index + 10 || grid.isDark(i, 0) != grid.isDark(i + 1, 0)) {
                widths.add(String.valueOf(run));
                run = 0;
            }
        }
        return String.join(" ", widths);
    }

    /** Reads a version 1 symbol: two columns at a time from the right, upwards first, the mask taken off (7.7.3, 7.8). */
    private static byte[] qrCodewords(ModuleGrid grid) {
        // Format bits, row 8, columns 2 to 4: the mask, itself masked by 101 (7.9.1).
        int mask = (bit(grid, 2, 8) << 2 | bit(grid, 3, 8) << 1 | bit(grid, 4, 8)) ^ 0b101;
        byte[] codewords = new byte[26];
        int count = 0;
        boolean up = true;
        for (int right = 20; right > 0; right -= 2) {
            int pair = right <= 6 ? right - 1 : right;
            for (int i = 0; i < 21; i++) {
                int y = up ? 20 - i : i;
                for (int x = pair; x > pair - 2; x--) {
                    if (!isFunction(x, y) && count < 26 * 8) {
                        int value = bit(grid, x, y) ^ (masked(mask, x, y) ? 1 : 0);
                        codewords[count / 8] |= (byte) (value << (7 - count % 8));
                        count++;
                    }
                }
            }
            up = !up;
        }
        return codewords;
    }

    private static boolean isFunction(int x, int y) {
        return x == 6 || y == 6 || (x < 9 && y < 9) || (x > 12 && y < 9) || (x < 9 && y > 12);
    }

    private static int bit(ModuleGrid grid, int x, int y) {
        return grid.isDark(x, y) ? 1 : 0;
    }

    /** ISO/IEC 18004, table 10. */
    private static boolean masked(int mask, int x, int y) {
        return switch (mask) {
            case 0 -> (x + y) % 2 == 0;
            case 1 -> y % 2 == 0;
            case 2 -> x % 3 == 0;
            case 3 -> (x + y) % 3 == 0;
            case 4 -> (y / 2 + x / 3) % 2 == 0;
            case 5 -> x * y % 2 + x * y % 3 == 0;
            case 6 -> (x * y % 2 + x * y % 3) % 2 == 0;
            default -> ((x + y) % 2 + x * y % 3) % 2 == 0;
        };
    }
}
