package dev.quoin.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TableReaderTest {
    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void eachRowKnowsTheLineOnWhichItStarts(String eol) {
        Table table = table(String.join(eol, "", "a,b", "1,\"x", "y\"", "", "2,z", ""));
        assertEquals(2, table.headerLine());
        assertEquals(List.of(3, 6), table.rows().stream().map(TableRow::line).toList());
        assertEquals(List.of("1", "x" + eol + "y"), table.rows().get(0).cells());
        assertEquals(new Place("order.csv", 6, 2), table.place(table.rows().get(1), 1));
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t"})
    void theSeparatorIsFoundByLooking(String separator) {
        assertEquals(
                List.of(List.of("a", "b"), List.of("1", "2")),
                Tables.read("a" + separator + "b\n1" + separator + "2\n"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"sep=;\n", "\"sep=;\"\n", "sep=;\r\n", "\uFEFFsep=;\r"})
    void aFirstLineThatNamesTheSeparatorIsNoRow(String first) {
        Table table = table(first + "a,b;c\n1,2;3\n");
        assertEquals(List.of("a,b", "c"), table.headers());
        assertEquals(2, table.headerLine());
        assertEquals(List.of("1,2", "3"), table.rows().get(0).cells());
        assertEquals(3, table.rows().get(0).line());
    }

    @Test
    void aHeaderThatOnlyBeginsLikeThatIsAHeader() {
        assertEquals(List.of(List.of("sep=;;", "b"), List.of("1", "2")), Tables.read("\"sep=;;\",b\n1,2\n"));
    }

    @Test
    void aSeparatorInQuotesDoesNotCount() {
        assertEquals(List.of(List.of("a,b,c,d", "e"), List.of("1", "2")), Tables.read("\"a,b,c,d\";e\n1;2\n"));
    }

    @Test
    void theSeparatorThatStandsAsOftenInEachRowWins() {
        assertEquals(
                List.of("Name, full", "Size, mm"),
                Tables.read("Name, full;Size, mm\nAnn;3\nBob;2\n").get(0));
    }

    @ParameterizedTest
    @ValueSource(strings = {"a|b,c;\n1|2\n", "sep=;\na|b,c;\n1|2\n"})
    void aGivenSeparatorIsTakenWhateverTheFirstLineSays(String order) {
        Table table = TableReader.read("o", order.getBytes(StandardCharsets.UTF_8), Optional.of('|'), new Problems())
                .orElseThrow();
        assertEquals(List.of("a", "b,c;"), table.headers());
    }

    @Test
    void aBlankLineIsNoRowButAnEmptyQuotedCellIs() {
        assertEquals(List.of(List.of("a"), List.of(""), List.of("x")), Tables.read("a\n\n\"\"\n\nx\n\n"));
    }

    @Test
    void aRowOfEmptyCellsIsARow() {
        assertEquals(List.of(List.of("a", "b"), List.of("", "")), Tables.read("a,b\n,\n"));
        assertEquals(List.of(List.of("a", "b"), List.of("1", "")), Tables.read("a,b\n1,"));
    }

    @Test
    void headersAloneAreATable() {
        assertEquals(List.of(List.of("a", "b")), Tables.read("a,b\n"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n\n", "\uFEFF"})
    void anEmptyFile(String text) {
        assertEquals(List.of("order.csv: empty; its first line must name the columns"), Tables.problems(text));
    }

    @Test
    void raggedRowsAreErrorsAndStayInTheTable() {
        String text = "a,b\n1\n2,3,4\n5,6\n";
        assertEquals(
                List.of(
                        "order.csv:2: 1 cell where the header row has 2; add what is missing",
                        "order.csv:3: 3 cells where the header row has 2; "
                                + "put quotes around a cell that holds a comma, or delete what is too much"),
                Tables.problems(text));
        assertEquals(
                List.of(List.of("a", "b"), List.of("1", ""), List.of("2", "3"), List.of("5", "6")),
                Tables.rows(table(text)));
    }

    /** A spreadsheet writes those in which something stood once, or that have a colour. */
    @Test
    void columnsAtTheEndThatAreEmptyFromTheHeaderOnArePassedOver() {
        assertEquals(
                List.of(List.of("a", "b"), List.of("1", "2"), List.of("3", ""), List.of("4", "5"), List.of("6", "7")),
                Tables.read("a,b,, ,\n1,2,,,\n3,, ,,\n4,5\n6,7,\n"));
    }

    @Test
    void oneOfThemThatIsNotEmptyIsAnError() {
        assertEquals(
                List.of("order.csv:1:3: column 3 has no name; name it, or delete it"),
                Tables.problems("a,b,,\n1,2,,\n3,4,x,\n"));
        assertTrue(read("a,b,\n3,4,x\n", new Problems()).isEmpty());
        assertEquals(
                List.of("order.csv:2: 4 cells where the header row has 2; "
                        + "put quotes around a cell that holds a comma, or delete what is too much"),
                Tables.problems("a,b,\n1,2,,\n"));
        assertEquals(
                List.of("order.csv:1:1: column 1 has no name; name it, or delete it"),
                Tables.problems(",\n").subList(0, 1));
    }

    @Test
    void headersMustBeThereAndDiffer() {
        assertEquals(
                List.of(
                        "order.csv:1:2: column 2 has no name; name it, or delete it",
                        "order.csv:1:3: columns 1 and 3 are both named 'a'; rename one",
                        "order.csv:2: 1 cell where the header row has 3; add what is missing"),
                Tables.problems("a,,a \n1\n"));
        assertTrue(read("a,,a \n1,2,3\n", new Problems()).isEmpty());
    }

    @Test
    void aQuoteThatNeverCloses() {
        String text = "a,b\n1,2\n3,\"4\n5,6\n7,8,9\n";
        assertEquals(
                List.of(
                        "order.csv:3:2: a quote that never closes; close it, or double it if it belongs to the text",
                        "order.csv:5: 3 cells where the header row has 2; "
                                + "put quotes around a cell that holds a comma, or delete what is too much"),
                Tables.problems(text));
        assertTrue(read(text, new Problems()).isEmpty());
    }

    @Test
    void aQuoteThatNeverClosesInTheHeader() {
        assertEquals(
                List.of("order.csv:1:2: a quote that never closes; close it, or double it if it belongs to the text"),
                Tables.problems("a,\"b\n1,2\n"));
    }

    @Test
    void textAfterAClosingQuote() {
        assertEquals(
                List.of("order.csv:2:2: text after a closing quote; "
                        + "double each quote that belongs to the text, or delete the rest"),
                Tables.problems("a,b\n1,\"Jo\" Smith\n2,3\n"));
    }

    @Test
    void aQuoteThatClosesOnlyAtTheNextOne() {
        assertEquals(
                List.of("order.csv:2:2: a quote that closes only on line 4, with text after it; "
                        + "close it on its own line, or double each quote that belongs to the text"),
                Tables.problems("a,b\n1,\"Jo\n2,3\n4,\"Ann\"\n5,6\n"));
    }

    @Test
    void nulAndControlCharacters() {
        assertEquals(
                List.of(
                        "order.csv:1:2: the control character (U+0085) in 'b\uFFFD'; retype the cell without it",
                        "order.csv:2:1: a: a NUL (U+0000) in 'x\uFFFDy'; retype the cell without it",
                        "order.csv:2:2: b\uFFFD: the control character (U+000B) in 'p\uFFFDq'; retype the cell without it"),
                Tables.problems("a,b\u0085\nx\0y,p\u000Bq\n"));
    }

    @Test
    void aWorkbookIsNamedAsOne() {
        assertEquals(
                List.of("order.csv: a workbook or an archive, not a CSV file; export the sheet as CSV (UTF-8)"),
                Tables.problems("PK\u0003\u0004\u0014\0"));
    }

    @Test
    void endlessCellsAreNotRead() {
        assertEquals(
                List.of("order.csv:2:1: a: a cell of 100001 characters, more than 100000; "
                        + "shorten it, or look for a quote that is not closed"),
                Tables.problems("a\n" + "x".repeat(100_001) + "\n"));
    }

    @Test
    void tooManyRowsAreNotRead() {
        assertEquals(
                List.of("order.csv:2000002: more than 2000000 rows; split the file"),
                Tables.problems("a\n" + "x\n".repeat(2_000_005)));
    }

    @Test
    void brokenQuotesOnEachLineEndSoon() {
        assertEquals(20, Tables.problems("a\n" + "\"x\"y\n".repeat(1000)).size());
    }

    private static Table table(String text) {
        return read(text, new Problems()).orElseThrow();
    }

    private static Optional<Table> read(String text, Problems problems) {
        return TableReader.read("order.csv", text.getBytes(StandardCharsets.UTF_8), Optional.empty(), problems);
    }
}
