package dev.quoin.art;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.order.Item;
import dev.quoin.order.Row;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DatesAndNumbersTest {
    /** Long dates of 5 March 2026: CLDR 35 of the platform, and the languages' own grammar (a month in the genitive). */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "en-GB|d MMMM yyyy|5 March 2026",
                "de|d. MMMM yyyy|5. März 2026",
                "cs|d. MMMM yyyy|5. března 2026",
                "fi|d. MMMM yyyy|5. maaliskuuta 2026",
                "pl|d MMMM yyyy|5 marca 2026",
            })
    void aDateIsPrintedInItsLanguage(String locale, String form, String expected) {
        String said = Merged.columns("Since")
                .locale(locale)
                .date(0, "d/M/yyyy")
                .says("${since?string(\"" + form + "\")}", "5/3/2026");
        assertEquals(expected, said);
    }

    @Test
    void aDateWithoutAFormIsPrintedAsItWasTyped() {
        Merged order = Merged.columns("Since").date(0, "d/M/yyyy");
        assertEquals("since 05/3/2026", order.says("since ${since}", "05/3/2026"));
        assertEquals("05/3/2026", order.says("${row[\"Since\"]}", " 05/3/2026 "));
        assertEquals("none", order.says("${(since?string(\"d.M.yyyy\"))!\"none\"}", ""));
    }

    @ParameterizedTest
    @ValueSource(strings = {"${since?string(\"d MMMM yyyy\")}", "${since?string(\"0.00\")}"})
    void aColumnThatIsNotSaidToBeOfDatesNorOfNumbersIsPrintedAsNeither(String placeholder) {
        String said = Merged.columns("Since").says(placeholder, "5/3/2026");
        assertTrue(
                said.endsWith(placeholder
                        + " needs a date or a number, and since is a text; say with --date-format how its dates "
                        + "are typed, or write ?number before ?string"),
                said);
    }

    @Test
    void whatCannotBeWorkedOutIsToldWithoutNamesOfClasses() {
        String said = Merged.columns("Since").says("${since.year}", "5/3/2026");
        assertTrue(said.endsWith("has evaluated to a string; correct the value or the placeholder"), said);
    }

    @Test
    void namesOfMonthsAreReadInTheLocalesLanguage() {
        assertEquals(
                "2009-04-01",
                Merged.columns("Since")
                        .locale("en-GB")
                        .date(0, "d MMMM yyyy")
                        .says("${since?string(\"yyyy-MM-dd\")}", "1 april 2009"));
        assertEquals(
                "2026-03-05",
                Merged.columns("Seit")
                        .locale("de")
                        .date(0, "d. MMMM yyyy")
                        .says("${seit?string(\"yyyy-MM-dd\")}", "5. März 2026"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "d/M/yyyy|31/2/2026|there is no such day as '31/2/2026' (d/M/yyyy); correct the date",
                "d/M/yyyy|29/2/2025|there is no such day as '29/2/2025' (d/M/yyyy); correct the date",
                "d/M/uuuu|31/4/2026|there is no such day as '31/4/2026' (d/M/uuuu); correct the date",
                "d/M/yyyy|5/3/26|'5/3/26' has a year of two digits, and the form is d/M/yyyy; write the year with four digits, or say yy in --date-format if all are from 2000 to 2099",
                "d/M/y|5/3/26|'5/3/26' has a year of two digits, and the form is d/M/y; write the year with four digits, or say yy in --date-format if all are from 2000 to 2099",
                "d/M/yyyy|2026-03-05|'2026-03-05' is no date of the form d/M/yyyy; write it so, or correct --date-format",
                "d/M/yyyy|soon|'soon' is no date of the form d/M/yyyy; write it so, or correct --date-format",
            })
    void whatIsNoDateIsAnErrorAtItsCell(String form, String typed, String expected) {
        Merged order = Merged.columns("Name", "Since").date(1, form);
        assertEquals("order.csv:2:2: Since: " + expected, order.says("${name}", "Anna", typed));
    }

    @Test
    void yearsOfTwoDigitsAreTakenWhereTheFormSaysSo() {
        Merged order = Merged.columns("Since").date(0, "d.M.yy");
        assertEquals("2026", order.says("${since?string(\"yyyy\")}", "5.3.26"));
        assertTrue(order.says("${since}", "5.3.2026").contains("no date of the form d.M.yy"));
    }

    @ParameterizedTest
    @CsvSource({"d/M", "yyyy", "d/M/q", "HH:mm", "d 'of M yyyy", "''"})
    void aFormSaysDayMonthAndYear(String pattern) {
        assertTrue(DateForm.of(pattern, Locale.ROOT).isEmpty());
    }

    @Property(seed = "2026")
    void aDayIsReadExactlyIfTheCalendarHasIt(
            @ForAll @IntRange(min = 1000, max = 9999) int year,
            @ForAll @IntRange(min = 1, max = 13) int month,
            @ForAll @IntRange(min = 1, max = 32) int day) {
        DateForm form = DateForm.of("yyyy-MM-dd", Locale.ROOT).orElseThrow();
        String typed = String.format(Locale.ROOT, "%04d-%02d-%02d", year, month, day);
        assertEquals(real(year, month, day), read(form, typed));
    }

    private static String real(int year, int month, int day) {
        try {
            return LocalDate.of(year, month, day).toString();
        } catch (DateTimeException none) {
            return "none";
        }
    }

    private static String read(DateForm form, String typed) {
        try {
            return form.parse(typed).toString();
        } catch (MergeFailure none) {
            return "none";
        }
    }

    @Test
    void aDayIsPrintedAsItWasReadInAnyYear() {
        Merged order = Merged.columns("Founded").date(0, "yyyy-MM-dd");
        for (String day : List.of("1066-10-14", "1492-10-12", "1582-10-15", "1900-02-28", "2000-02-29", "2399-12-31")) {
            assertEquals(day, order.says("${founded?string(\"yyyy-MM-dd\")}", day));
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "de|${price?number}|1234567.5|1234567,5",
                "en|${price?number}|1234567.5|1234567.5",
                "en|${price?number?string(\"0.00\")}|2026|2026.00",
                "de|${price?number?string(\",##0.00\")}|1234.5|1.234,50",
                "en|${(price?number + 1)?c}|2026|2027",
                "en|${price}|2,026.00|2,026.00",
            })
    void numbersAreNeverGroupedUnlessTheTemplateSaysSo(
            String locale, String placeholder, String typed, String expected) {
        assertEquals(expected, Merged.columns("Price").locale(locale).says(placeholder, typed));
    }

    /** Unicode Standard, section 5.18 and SpecialCasing.txt. */
    @Test
    void upperCaseIsThatOfTheLanguage() {
        assertEquals("İSTANBUL", Merged.columns("Name").locale("tr").says("${name?upper_case}", "istanbul"));
        assertEquals("ISTANBUL", Merged.columns("Name").says("${name?upper_case}", "istanbul"));
        assertEquals("STRASSE", Merged.columns("Name").locale("de").says("${name?upper_case}", "straße"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Maren Oksavik|MO",
                "Jean-Luc Picard|JLP",
                "Ludwig van Beethoven|LvB",
                "\"Bob\" (the) O'Brien|BtO",
                "Élodie Šimková|ÉŠ",
                "É́lodie|É́",
                "Σοφία Καραλή|ΣΚ",
                "Anna\u00A0Berg|AB",
            })
    void initialsAreFirstLettersOfWords(String name, String expected) {
        assertEquals(expected, Merged.columns("Name").says("${initials(name)}", name));
    }

    @Test
    void initialsMayBeUpperCasedAndParted() {
        Merged order = Merged.columns("Name");
        assertEquals("L.V.B.", order.says("${initials(name, \".\")?upper_case}", "Ludwig van Beethoven"));
        assertTrue(order.says("${initials(name, 3)}", "Anna").contains("initials takes texts"));
    }

    @Test
    void initialsOfNoNameAreToldAsEmpty() {
        assertEquals(
                "order.csv:2:1: Name: ${initials(name)} cannot be worked out: the text that initials is to shorten is empty; "
                        + "correct the value or the placeholder",
                Merged.columns("Name").says("${initials(name)}", ""));
    }

    /** The cell that is at fault, and not the first that the text uses. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "${name} ${price}|order.csv:2:2: Price: price is empty, and the template uses it",
                "${name + price}|order.csv:2:2: Price: price is empty, and the template uses it",
                "${name} ${number?number}|order.csv:2:3: Number: ${number?number} cannot be worked out",
            })
    void aProblemIsToldAtItsOwnCell(String placeholder, String expected) {
        String said = Merged.columns("Name", "Price", "Number").says(placeholder, "Anna", "", "x");
        assertTrue(said.startsWith(expected), said);
    }

    @Test
    void aTextThatIsPrintedAsADateIsToldWithTheOptionThatMakesItOne() {
        assertEquals(
                "order.csv:2:2: Born: ${born?string(\"d MMMM yyyy\")} needs a date or a number, and born is a text; say with "
                        + "--date-format how its dates are typed, or write ?number before ?string",
                Merged.columns("Name", "Born").says("${name} ${born?string(\"d MMMM yyyy\")}", "Anna", "1/3/1999"));
    }

    @Test
    void anItemHasItsNumberItsCopyAndItsSerial() {
        Merged order = Merged.columns("Name").serial(new Serial(100, 5, 5, "HB-"));
        Item item = new Item(12, new Row(3, 5, List.of("Anna")), 2);
        assertEquals("12 2 HB-00155", order.says("${item_number} ${copy_number} ${serial}", item));
    }

    @Test
    void aColumnComesBeforeWhatItemsHave() {
        assertEquals("A7", Merged.columns("Item number").says("${item_number}", "A7"));
    }

    /** FreeMarker's manual, "Reserved names": a column called so is reached as {@code row["..."]} alone. */
    @ParameterizedTest
    @ValueSource(strings = {"gt", "gte", "lt", "lte", "as", "in", "using"})
    void aColumnNamedAsAWordOfTheLanguageIsAskedForByItsHeader(String word) {
        Merged merged = Merged.columns(word);
        assertTrue(merged.says("${" + word + "}", "A7").contains("the placeholder ${" + word + "} cannot be read: "));
        assertEquals("A7", merged.says("${row['" + word + "']}", "A7"));
    }

    @Test
    void withoutSerialNumbersTheirPlaceholderIsAnError() {
        assertEquals(
                "tag.svg:2:3: '${serial}' uses 'serial', and the order has no such column; "
                        + "give --serial-start for serial numbers",
                Merged.columns("Name").says("${serial}", "Anna"));
    }
}
