package dev.quoin.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The rules of RFC 4180, "Common Format and MIME Type for CSV Files", October 2005, section 2, each by its number. */
class Rfc4180Test {
    private static final List<String> HEADERS = List.of("p", "q", "r");
    private static final List<String> FIRST = List.of("aaa", "bbb", "ccc");

    @Test
    void rule1EachRecordStandsOnALineOfItsOwn() {
        assertEquals(
                List.of(HEADERS, FIRST, List.of("zzz", "yyy", "xxx")),
                Tables.read("p,q,r\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"));
    }

    @Test
    void rule2TheLastRecordNeedsNoLineBreak() {
        assertEquals(
                List.of(HEADERS, FIRST, List.of("zzz", "yyy", "xxx")),
                Tables.read("p,q,r\r\naaa,bbb,ccc\r\nzzz,yyy,xxx"));
    }

    @Test
    void rule3TheFirstLineNamesTheColumns() {
        assertEquals(
                List.of("field_name", "other name"),
                Tables.read("field_name,other name\r\na,b\r\n").get(0));
    }

    @Test
    void rule4SpacesArePartOfACellAndTheLastCellHasNoCommaAfterIt() {
        assertEquals(
                List.of(" aaa", "bbb ", "  "),
                Tables.read("p,q,r\r\n aaa,bbb ,  \r\n").get(1));
    }

    @Test
    void rule5CellsMayBeQuotedOrNot() {
        assertEquals(FIRST, Tables.read("p,q,r\r\n\"aaa\",bbb,\"ccc\"\r\n").get(1));
    }

    @Test
    void rule5AQuoteInsideAnUnquotedCellIsTakenAsItStands() {
        assertEquals(
                List.of("5\" tag", "b", "c"),
                Tables.read("p,q,r\r\n5\" tag,b,c\r\n").get(1));
    }

    @Test
    void rule6LineBreaksQuotesAndCommasStandInQuotes() {
        assertEquals(
                List.of("aaa", "b \r\nbb", "c,cc"),
                Tables.read("p,q,r\r\n\"aaa\",\"b \r\nbb\",\"c,cc\"\r\n").get(1));
    }

    @Test
    void rule7AQuoteInQuotesIsDoubled() {
        assertEquals(
                List.of("aaa", "b\"bb", "ccc"),
                Tables.read("p,q,r\r\n\"aaa\",\"b\"\"bb\",\"ccc\"\r\n").get(1));
    }
}
