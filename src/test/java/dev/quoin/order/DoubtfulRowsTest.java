package dev.quoin.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import dev.quoin.table.TableReader;
import java.nio.charset.StandardCharsets;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Given a small order, then these are asked about, and nothing else. */
class DoubtfulRowsTest {
    private static final String NAMES = "Name\nMaren Oksavik\nTobias Fennimore\nRui Vasconcelos\nAoife Ní Bhraonáin\n";

    private static List<String> doubts(String csv) {
        return doubts(csv, new BitSet());
    }

    private static List<String> doubts(String csv, BitSet joined) {
        Problems problems = new Problems();
        Order order = TableReader.read("order.csv", csv.getBytes(StandardCharsets.UTF_8), Optional.of(','), problems)
                .flatMap(table -> Order.of(table, problems))
                .orElseThrow();
        Items items = Items.of(order, order.column("Pieces"), problems);
        BitSet columns = new BitSet();
        columns.set(0);
        new DoubtfulRows(order, items).tell(columns, joined, problems);
        return problems.sorted().stream().map(Problem::toString).toList();
    }

    private static List<String> doubtsOf(String value) {
        return doubts(NAMES + value + "\n").stream()
                .map(told -> told.replace("order.csv:6:1: warning: Name: ", ""))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"n/a", "N/A", "TBC", "tba", "-", "--", "—", "?", "???", "#N/A", "...", "#####"})
    void valuesThatStandInForOthers(String value) {
        assertEquals(
                List.of("'" + value
                        + "' would be marked as it stands; write the value, or empty the cell if there is none"),
                doubtsOf(value));
    }

    @Test
    void theHeadersOwnWord() {
        assertEquals(
                List.of("'NAME' is the name of the column; write the value, or take the row out"), doubtsOf("NAME"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Na",
                "Null",
                "Anne-Marie O'Neill",
                "李 小龙",
                "山田　太郎",
                "Tomy トミー",
                "عبد الرحمن",
                "Нефёдова",
                "USA",
                "Ó",
                "می‌خواهم",
                "Zoe\u0301",
                "J. R. R. Tolkien",
                "Dr. Łukasz Żak",
                "हिन्दी",
                "Ångström"
            })
    void namesThatAreRightAreLeftInPeace(String name) {
        assertEquals(List.of(), doubtsOf(name));
    }

    @Test
    void capitalsWhereMostAreNot() {
        assertEquals(
                List.of("'RUI VASCONCELOS' is all in capitals, and most of this column is not; "
                        + "write it as the others, if it is to look like them"),
                doubtsOf("RUI VASCONCELOS"));
        assertEquals(List.of(), doubts("Name\nANNA BERG\nBO LIND\nCARL OHLSEN\nMaren Oksavik\n"));
    }

    @Test
    void digitsInNames() {
        assertEquals(List.of("'Mar1a Berg' has a digit in a name; correct it if it is a slip"), doubtsOf("Mar1a Berg"));
        assertEquals(List.of(), doubts("Line 2\nHarbour\nPilot\nSince 1998\nTug\nYard\n"));
        assertEquals(List.of(), doubts("Name\nPump 1\nPump 2\nPump 3\nValve\n"));
    }

    @Test
    void zerosThatASpreadsheetTookAway() {
        assertEquals(
                List.of(
                        "order.csv:4:1: warning: Serial: '124' is shorter than the 5 digits of the others; zeros in front "
                                + "may have been lost; make the column text in the spreadsheet, and type the number again"),
                doubts("Serial\n00122\n00123\n124\n00125\n00126\n10000\n"));
        assertEquals(List.of(), doubts("Count\n9\n10\n11\n12\n100\n"));
    }

    @Test
    void longNumbersThatASpreadsheetShortened() {
        assertEquals(
                List.of("order.csv:2:1: warning: Code: '4.00638E+12' looks like a long number that a spreadsheet has "
                        + "shortened; make the column text in the spreadsheet, and type the number again"),
                doubts("Code\n4.00638E+12\n"));
    }

    /** Unicode Technical Standard 39, section 5: letters of two scripts that look alike. */
    @Test
    void twoScriptsInOneWord() {
        assertEquals(
                List.of("'Mаren' has Latin and Cyrillic letters in one word (а is U+0430 CYRILLIC SMALL LETTER A); "
                        + "type the word again in one script"),
                doubtsOf("M\u0430ren"));
        assertEquals(
                List.of("'Σoφία' has Greek and Latin letters in one word (o is U+006F LATIN SMALL LETTER O); "
                        + "type the word again in one script"),
                doubtsOf("Σoφία"));
        assertEquals(List.of(), doubtsOf("Σοφία Smith"));
    }

    @Test
    void blanksInside() {
        assertEquals(
                List.of("two spaces side by side in 'Maren  Oksavik'; make it one space, or take it out"),
                doubtsOf("Maren  Oksavik"));
        assertEquals(
                List.of("a blank that is no plain space (U+00A0 NO-BREAK SPACE) in 'Maren\u00A0Oksavik'; "
                        + "make it one space, or take it out"),
                doubtsOf("Maren\u00A0Oksavik"));
        assertEquals(
                List.of("a tab in 'Maren Oksavik'; make it one space, or take it out"), doubtsOf("Maren\tOksavik"));
        assertEquals(List.of(), doubtsOf("  Maren Oksavik  "));
    }

    @ParameterizedTest
    @CsvSource({
        "202A, LEFT-TO-RIGHT EMBEDDING",
        "202E, RIGHT-TO-LEFT OVERRIDE",
        "2066, LEFT-TO-RIGHT ISOLATE",
        "2069, POP DIRECTIONAL ISOLATE",
        "200B, ZERO WIDTH SPACE",
        "2060, WORD JOINER",
        "FEFF, ZERO WIDTH NO-BREAK SPACE",
        "00AD, SOFT HYPHEN",
        "2028, LINE SEPARATOR",
        "200C, ZERO WIDTH NON-JOINER",
        "200D, ZERO WIDTH JOINER"
    })
    void charactersThatNobodySees(String number, String name) {
        String hidden = Character.toString(Integer.parseInt(number, 16));
        assertEquals(
                List.of("a hidden character (U+" + number + " " + name + ") in 'Ma<U+" + number
                        + ">ren'; take it out, or type the value again"),
                doubtsOf("Ma" + hidden + "ren"));
    }

    /** The Unicode Standard, sections 9.2 (Persian), 12.1 (Devanagari), 16.1 (Thai); Unicode Technical Standard 51, 2.3. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "می\u200Cخواهم",
                "نامه\u200Cای",
                "مُ\u200Cحمد",
                "ه\u200D",
                "क्\u200Dष",
                "ශ්\u200Dරී",
                "สม\u200Bชาย",
                "\uD83D\uDC69\uD83C\uDFFD\u200D\uD83D\uDE80",
                "\u2764\uFE0F\u200D\uD83D\uDD25",
                "\uD83D\uDC68\u200D\uD83D\uDC69\u200D\uD83D\uDC67"
            })
    void joinersWhereScriptsAndPicturesAreWrittenWithThem(String name) {
        assertEquals(List.of(), doubtsOf(name));
    }

    @Test
    void lineBreaksThatTheTemplateHasNoLineFor() {
        String csv = "Name\nMaren Oksavik\n\"Ada\nLovelace\"\n";
        assertEquals(List.of(), doubts(csv));
        BitSet joined = new BitSet();
        joined.set(0);
        assertEquals(
                List.of("order.csv:3:1: warning: Name: a line break in 'Ada Lovelace', which the template has no line "
                        + "for: it becomes a space; take it out, or give the text more lines with data-lines"),
                doubts(csv, joined));
    }

    @Test
    void theSameRowTwice() {
        assertEquals(
                List.of("order.csv:4:1: warning: the same row, in all its cells, as line 2; "
                                + "leave both if two pieces are meant, or take one out")
                        .stream()
                        .map(told -> told.replace(":4:1:", ":4:"))
                        .toList(),
                doubts("Name,Role\nAnna,Pilot\nAnna,Cook\nAnna,Pilot\n"));
    }

    /** A spreadsheet writes nothing but separators for a row that was emptied. */
    @Test
    void aRowWithoutAValue() {
        assertEquals(
                List.of("order.csv:3: warning: a row without a value, which makes a piece all the same; "
                        + "delete the row, unless a piece without a text is meant"),
                doubts("Name,Role\nAnna,Pilot\n, \nBo,\n"));
    }

    @Test
    void columnsThatAreNotMarkedAndRowsOfNoPiecesAreNobodysDoubt() {
        assertEquals(List.of(), doubts("Name,Note\nAnna,TBC\nBo,n/a\n"));
        assertEquals(
                List.of("order.csv:2:2: note: Pieces: 0, so nothing is made for this row"),
                doubts("Name,Pieces\nTBC,0\nBo,1\n"));
    }

    @Test
    void afterTwentyOfAKindOnlyTheirNumberIsTold() {
        String rows = IntStream.range(0, 1000).mapToObj(i -> "TBC," + i + "\n").collect(Collectors.joining());
        List<String> told = doubts("Name,No\n" + rows);
        assertEquals(21, told.size());
        assertTrue(told.get(0)
                .startsWith("order.csv:1:1: warning: 980 more values of 'Name' are like those; look through"));
    }

    @Test
    void valuesAreNeverChanged() {
        String csv = "Name\n  n/a \n";
        Problems problems = new Problems();
        Order order = TableReader.read("order.csv", csv.getBytes(StandardCharsets.UTF_8), Optional.of(','), problems)
                .flatMap(table -> Order.of(table, problems))
                .orElseThrow();
        BitSet all = new BitSet();
        all.set(0);
        new DoubtfulRows(order, Items.of(order, OptionalInt.empty(), problems)).tell(all, new BitSet(), problems);
        assertEquals(List.of("  n/a "), order.rows().get(0).cells());
    }
}
