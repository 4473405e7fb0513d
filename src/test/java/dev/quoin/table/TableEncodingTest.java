package dev.quoin.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TableEncodingTest {
    private static final String TEXT = "Name,Város\nŁucja Žižková,Győr\nJosé,東京\n";
    private static final List<List<String>> ROWS =
            List.of(List.of("Name", "Város"), List.of("Łucja Žižková", "Győr"), List.of("José", "東京"));

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16LE", "UTF-16BE"})
    void aByteOrderMarkDecides(String charset) {
        assertEquals(ROWS, Tables.read(("\uFEFF" + TEXT).getBytes(Charset.forName(charset))));
    }

    @Test
    void utf8NeedsNoMark() {
        assertEquals(ROWS, Tables.read(TEXT.getBytes(StandardCharsets.UTF_8)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-16LE", "UTF-16BE"})
    void utf16WithoutAMarkIsSeenByItsNuls(String charset) {
        String text = "Name;Town\nŁucja;Gdynia\n";
        assertEquals(
                List.of(List.of("Name", "Town"), List.of("Łucja", "Gdynia")),
                Tables.read(text.getBytes(Charset.forName(charset))));
    }

    @Test
    void anythingElseIsWindows1252AndTheAssumptionIsTold() {
        // 0x80 is the euro sign and 0x9A s with caron in code page 1252 (WHATWG Encoding, index-windows-1252).
        byte[] content = bytes("Name,Price\nAnna,3\nMi", 0x9A, "ka,5 ", 0x80, "\nJos", 0xE9, ",7\n");
        assertEquals(
                List.of(
                        "order.csv:3:1: warning: Name: the file is not UTF-8 and was read as Windows-1252, which gives 'Miška'; "
                                + "check the accented letters, and save the file as UTF-8 if they are wrong"),
                Tables.problems(content));
        assertEquals(
                List.of(List.of("Name"), List.of("José")),
                Tables.rows(TableReader.read(
                                "x",
                                bytes("Name\nJos", 0xE9),
                                java.util.Optional.empty(),
                                new dev.quoin.problem.Problems())
                        .orElseThrow()));
    }

    @Test
    void aDamagedUtf8FileIsNotTakenForWindows1252() {
        byte[] content = bytes("Name,Role\nZo", 0xC3, 0xAB, ",Ren", 0xC3, 0xA9, "e\nJos", 0xE9, ",x\n");
        assertEquals(
                List.of("order.csv:3:1: Name: bytes that are no text in UTF-8, in 'Jos\uFFFD'; "
                        + "save the file again as UTF-8 text, or retype the cell"),
                Tables.problems(content));
    }

    @Test
    void aByteThatWindows1252LeavesOpenIsNoText() {
        assertEquals(
                List.of("order.csv:2:2: b: bytes that are no text in windows-1252, in 'x\uFFFD'; "
                        + "save the file again as UTF-8 text, or retype the cell"),
                Tables.problems(bytes("a,b\n1,x", 0x81, "\n")));
    }

    @Test
    void aCharacterThatWasLostEarlierIsAWarning() {
        assertEquals(
                List.of("order.csv:2:2: warning: b: a character was lost before the file was saved (U+FFFD), "
                        + "in 'Jos\uFFFD'; retype the cell"),
                Tables.problems("a,b\n1,Jos\uFFFD\n"));
    }

    @Test
    void theCellThatTheAssumptionIsToldAboutIsCheckedToItsEnd() {
        List<String> problems = Tables.problems(bytes("a\nJos", 0xE9, 0x81, "\n"));
        assertEquals(2, problems.size(), problems.toString());
    }

    @Test
    void halfASurrogatePairIsNoText() {
        byte[] content = bytes(0xFE, 0xFF, 0, 'a', 0, '\n', 0xD8, 0x3D, 0, '\n');
        assertEquals(
                List.of("order.csv:2:1: a: bytes that are no text in UTF-16BE, in '\uFFFD'; "
                        + "save the file again as UTF-8 text, or retype the cell"),
                Tables.problems(content));
    }

    private static byte[] bytes(Object... parts) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        for (Object part : parts) {
            if (part instanceof String text) {
                out.writeBytes(text.getBytes(StandardCharsets.US_ASCII));
            } else {
                out.write(part instanceof Character c ? c : (Integer) part);
            }
        }
        return out.toByteArray();
    }
}
