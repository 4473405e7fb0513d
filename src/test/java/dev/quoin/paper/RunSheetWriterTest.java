package dev.quoin.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The run sheet as a text. */
class RunSheetWriterTest {
    private static final List<PlateView> TWO_PLATES = List.of(
            SampleSheet.tray(1, SampleSheet.FIRST_ITEM, List.of("Ada Marsh", "Bo")),
            SampleSheet.tray(2, SampleSheet.FIRST_ITEM + 17, List.of("Ada Marsh", "Bo")));

    /** The whole paper but its style and its script, which say nothing of the run. */
    @Test
    void aSmallPaperIsAsItWasWhenSomeoneLastReadIt() throws IOException {
        PlateView plate = SampleSheet.plate(
                1,
                List.of(),
                List.of(
                        SampleSheet.filled("A1", -20, 10, 0, SampleSheet.OBLONG, 7001, "Ada Marsh", "5 March 2026"),
                        SampleSheet.filled("A2", 20, 10, 90, SampleSheet.OBLONG, 7002, "Bo"),
                        SampleSheet.unfilled("A3", 20, -30, SampleSheet.OBLONG, SlotState.UNUSABLE)));
        String html = SampleSheet.html(
                        SampleSheet.head(
                                "small",
                                List.of(plate),
                                SampleSheet.problems(),
                                List.of(new LeftOut(14, "3-5", "Name: too long for its box"))),
                        List.of(plate))
                .replaceAll("(?s)(<(style|script)>).*?(</\\2>)", "$1$3");
        // Beside the classes, to be read and laid in as the new expectation.
        Files.writeString(Path.of("target", "run-sheet-small.html"), html);
        assertEquals(resource("run-sheet-small.html"), html);
    }

    @Test
    void everyItemStandsOnceInATableAndOnceInAPicture() {
        String html = twoPlates();
        for (int item = SampleSheet.FIRST_ITEM; item < SampleSheet.FIRST_ITEM + 34; item++) {
            assertEquals(1, count(html, "<tr data-item=\"" + item + "\">"), "rows of item " + item);
            assertEquals(1, count(html, "item-no\">" + item + "<"), "numbers in tables of item " + item);
            assertEquals(1, count(html, "data-picture-item=\"" + item + "\""), "slots of item " + item);
            assertEquals(1, count(html, ">" + item + "</text>"), "numbers in pictures of item " + item);
        }
    }

    @Test
    void theTableIsInTheOrderOfLoading() {
        PlateView plate = SampleSheet.plate(
                1,
                List.of(),
                List.of(
                        SampleSheet.filled("B", 0, 0, 0, SampleSheet.OBLONG, 7009, "last item"),
                        SampleSheet.filled("A", 40, 0, 0, SampleSheet.OBLONG, 7002, "first item")));
        String html = SampleSheet.html(SampleSheet.head("r", List.of(plate), List.of(), List.of()), List.of(plate));
        assertBefore(html, "<tr data-item=\"7009\"", "<tr data-item=\"7002\"");
    }

    @Test
    void whatWasLeftOutAndEveryProblemComeFirstTheWorstOnTop() {
        String html = twoPlates();
        assertBefore(html, "line 14", "Name: too long for its box; shorten it");
        assertBefore(html, "Name: too long for its box; shorten it", "did you mean &#39;engrave&#39;?");
        assertBefore(html, "did you mean &#39;engrave&#39;?", "Quantity: 0");
        assertBefore(html, "Quantity: 0", "Time in all");
        assertBefore(html, "Quantity: 0", "id=\"plate-1\"");
    }

    @Test
    void withNothingWrongNothingIsSaidAboutIt() {
        String html = SampleSheet.html(SampleSheet.head("r", TWO_PLATES, List.of(), List.of()), TWO_PLATES);
        assertFalse(html.contains("look-first") || html.contains("left-out"));
    }

    @Test
    void ofMoreProblemsThanAPersonReadsTheFirstHundredAreShownAndTheRestCounted() {
        List<Problem> many = java.util.stream.IntStream.rangeClosed(1, 250)
                .mapToObj(line -> Problem.warning(Place.of("order.csv", line), "warned about " + line, ""))
                .toList();
        String html = SampleSheet.html(SampleSheet.head("r", List.of(), many, List.of()), List.of());
        assertEquals(100, count(html, "warned about "));
        assertTrue(html.contains("The first 100 of 250"));
    }

    @Test
    void itNeedsNothingFromAnywhereElse() {
        String html = twoPlates();
        assertFalse(html.contains("http"));
        assertFalse(Pattern.compile("(src|href)=\"(?!#)|@import|url\\((?!#)")
                .matcher(html)
                .find());
    }

    @Test
    void aValueNeverBecomesMarkup() {
        String nasty = "<b>&\"'${7*7}</script>";
        PlateView plate = SampleSheet.plate(
                1, List.of(), List.of(SampleSheet.filled(nasty, 0, 0, 0, SampleSheet.OBLONG, 7001, nasty)));
        String html = SampleSheet.html(
                SampleSheet.head(
                        nasty,
                        List.of(plate),
                        List.of(Problem.warning(Place.of(nasty), nasty, nasty)),
                        List.of(new LeftOut(1, "", nasty))),
                List.of(plate));
        assertFalse(html.contains("<b>&\"") || html.contains(nasty) || html.contains("49}"));
        assertTrue(html.contains("&lt;b&gt;&amp;&quot;&#39;${7*7}&lt;/script&gt;"));
        assertEquals(1, count(html, "</script>"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "ar-EG", "de-DE", "hi-IN-u-nu-deva"})
    void theSameViewGivesTheSamePaperOnAnyLocale(String locale) {
        String expected = twoPlates();
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(locale));
            assertEquals(expected, twoPlates());
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void changesStandOutAsStopSigns() {
        String html = twoPlates();
        assertEquals(1, count(html, ">STOP</text>"));
        assertTrue(html.contains("Change the lens: <s dir=\"auto\">wide</s> &#8594; <b dir=\"auto\">narrow</b>"));
    }

    @Test
    void theHeightToSetIsSaidAsASumAndAsItsParts() {
        assertTrue(twoPlates().contains("<b>248 mm</b> (focus distance 246.5 + blank 1.5)"));
    }

    @Test
    void withoutADateNoneIsSaid() {
        SheetHead head = SampleSheet.head("r", List.of(), List.of(), List.of());
        SheetHead undated = new SheetHead(
                "r",
                Optional.empty(),
                "order.csv",
                0,
                0,
                0,
                0,
                List.of(),
                head.groups(),
                List.of(),
                List.of(),
                "1",
                List.of(),
                List.of());
        assertFalse(SampleSheet.html(undated, List.of()).contains("handed in"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "1", "2M", "3B"})
    void aLaserClassIsNeverInferred(String laserClass) {
        SheetHead head = SampleSheet.head("r", List.of(), List.of(), List.of());
        SheetHead other = new SheetHead(
                "r",
                Optional.empty(),
                "order.csv",
                0,
                0,
                0,
                0,
                List.of(),
                head.groups(),
                List.of(),
                List.of(),
                laserClass,
                head.materials(),
                List.of());
        String html = SampleSheet.html(other, List.of());
        assertFalse(html.contains("Class "));
        assertTrue(html.contains("may release: <span dir=\"auto\">hexavalent chromium and nickel</span>."));
        assertTrue(html.contains("These notes are no risk assessment."));
    }

    @Test
    void classFourIsCautionedAgainstAndNothingIsCalledSafe() {
        String html = twoPlates();
        assertTrue(html.contains("Class 4 laser (IEC 60825-1)."));
        assertFalse(Pattern.compile("(?i)\\b(safe|harmless|no hazard)\\b")
                .matcher(html)
                .find());
    }

    @Test
    void aPackingListNamesEachPieceUnderItsCustomer() throws IOException {
        StringWriter out = new StringWriter();
        var piece = new SheetFoot.Piece(7001, List.of("Ada Marsh"), 1, "A1");
        new RunSheetWriter().foot(out, new SheetFoot(List.of(new SheetFoot.Parcel("North & Sons", List.of(piece)))));
        assertBefore(out.toString(), "North &amp; Sons", ">7001<");
    }

    @Test
    void aReprintsSheetNamesItsItemsTheirPlateAndTheReason() throws IOException {
        PlateView plate = SampleSheet.plate(
                3, List.of(), List.of(SampleSheet.filled("A", 0, 0, 0, SampleSheet.OBLONG, 7004, "Ada")));
        StringWriter out = new StringWriter();
        new ReprintSheet()
                .write(out, new ReprintView("tags", 2, "7004", "3", "slipped", List.of(), plate, "4", List.of()));
        String html = out.toString();
        assertTrue(
                html.contains("Item <b>7004</b> of plate <b>3</b>, marked again. Reason: <b dir=\"auto\">slipped</b>"));
        assertTrue(html.contains("Reprint <b>2</b>"));
        assertEquals(1, count(html, ">7004</text>"));
        assertFalse(html.contains("http"));
    }

    private static String twoPlates() {
        return SampleSheet.html(
                SampleSheet.head(
                        "two",
                        TWO_PLATES,
                        SampleSheet.problems(),
                        List.of(new LeftOut(14, "7090", "Name: too long for its box"))),
                TWO_PLATES);
    }

    private static void assertBefore(String text, String first, String second) {
        int at = text.indexOf(first);
        int then = text.indexOf(second);
        assertTrue(at >= 0 && then > at, first + " at " + at + ", " + second + " at " + then);
    }

    private static int count(String text, String part) {
        return text.split(Pattern.quote(part), -1).length - 1;
    }

    private static String resource(String name) throws IOException {
        try (InputStream in = RunSheetWriterTest.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void whatIsTheSameInManyLinesIsToldOnceWithTheLines() throws IOException {
        List<Problem> problems = new ArrayList<>();
        problems.add(Problem.note(Place.of("tray"), "slot C is not usable", ""));
        for (int line : new int[] {9, 12, 12, 31}) {
            problems.add(Problem.note(Place.of("order.csv", line).at(4), "Quantity: 0", "no item is made"));
        }
        problems.add(Problem.warning(Place.of("order.csv", 7), "twice", "take one out"));
        String html = SampleSheet.html(SampleSheet.head("x", List.of(), problems, List.of()), List.of());
        List<String> told = Jsoup.parse(html).select(".alert li").eachText();
        assertEquals(
                List.of(
                        "warning order.csv:7: twice; take one out",
                        "note tray: slot C is not usable",
                        "note order.csv, lines 9, 12, 31: Quantity: 0; no item is made"),
                told);
    }
}
