package dev.quoin.paper;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.browser.Poppler;
import dev.quoin.geometry.Polyline;
import dev.quoin.lettering.FontLibrary;
import dev.quoin.lettering.TypesetText;
import dev.quoin.problem.Problems;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A run sheet of three plates as PDF: what poppler reads from it. */
class PapersInPdfTest {
    private static final double MM = 25.4 / 72;
    private static final int PLATES = 3;
    private static final int ITEMS = 17;
    private static final List<String> NAMES = List.of("Ada Marsh", "Wilhelmina Oosterhuis", "\u0645\u062D\u0645\u062F");

    @TempDir
    private Path folder;

    private Path sheet() throws IOException {
        return Files.write(folder.resolve("sheet.pdf"), bytes(plates(NAMES)));
    }

    private static List<PlateView> plates(List<String> names) {
        List<PlateView> plates = new ArrayList<>();
        for (int i = 0; i < PLATES; i++) {
            plates.add(SampleSheet.tray(i + 1, SampleSheet.FIRST_ITEM + ITEMS * i, names));
        }
        return plates;
    }

    private static byte[] bytes(List<PlateView> plates) throws IOException {
        FontLibrary fonts = FontLibrary.open(List.of(), false, new Problems());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (RunSheetPdf pdf = new RunSheetPdf("harbour", fonts)) {
            for (PlateView plate : plates) {
                pdf.plate(plate);
            }
            SheetFoot.Piece piece = new SheetFoot.Piece(1, List.of("Ada"), 1, "A1");
            pdf.save(
                    out,
                    SampleSheet.head("harbour", plates, SampleSheet.problems(), List.of(new LeftOut(14, "", "bad"))),
                    new SheetFoot(List.of(new SheetFoot.Parcel("Ferry club", List.of(piece)))));
        }
        return out.toByteArray();
    }

    /** Both papers hold a sheet that keeps to 184 x 254 mm: ISO 216 A4, and Letter of 8.5 x 11 in. */
    @Test
    void whatIsWrittenKeepsTo184By254OnAnA4Page() throws Exception {
        Path pdf = sheet();
        Matcher size = Pattern.compile("Page size: +([0-9.]+) x ([0-9.]+)").matcher(Poppler.info(pdf));
        assertTrue(size.find());
        assertEquals(210, Double.parseDouble(size.group(1)) * MM, 0.1);
        assertEquals(297, Double.parseDouble(size.group(2)) * MM, 0.1);
        int words = 0;
        for (double[] box : Poppler.words(pdf)) {
            assertTrue(box[0] * MM > 13 - 0.1 && box[2] * MM < 13 + 184 + 0.1, "from " + box[0] * MM);
            assertTrue(box[1] * MM > 21.5 - 0.6 && box[3] * MM < 21.5 + 254 + 0.6, "to " + box[3] * MM);
            words++;
        }
        assertTrue(words > 1000, words + " words");
    }

    @Test
    void eachItemStandsOnceInATableAndOnceInAPicture() throws Exception {
        String all = String.join("\n", Poppler.text(sheet()));
        for (int item = SampleSheet.FIRST_ITEM; item < SampleSheet.FIRST_ITEM + PLATES * ITEMS; item++) {
            assertEquals(2, all.split("\\b" + item + "\\b", -1).length - 1, "item " + item);
        }
    }

    @Test
    void aPlatesHeadStandsOnThePageOnWhichItsTableBegins() throws Exception {
        List<String> pages = Poppler.text(sheet());
        for (int plate = 1; plate <= PLATES; plate++) {
            String header = "Text on the items of plate " + plate;
            String page = pages.stream()
                    .filter(text -> text.contains(header))
                    .findFirst()
                    .orElseThrow();
            assertTrue(page.contains(String.format("plate-%03d.svg", plate)), page);
            String rows = page.substring(page.indexOf(header));
            assertTrue(rows.split("5 March 2026", -1).length > 3, "three rows under the header: " + rows);
        }
    }

    @Test
    void theSummaryStandsBeforeThePlatesAndThePackingListAfterThem() throws Exception {
        List<String> pages = Poppler.text(sheet());
        assertTrue(pages.get(0).contains("Left out: these rows are on no plate"), pages.get(0));
        String last = pages.get(pages.size() - 1);
        assertTrue(last.contains("Packing list") && last.contains("Ferry club"), last);
    }

    @Test
    void everyPieceOfTextOfTheHtmlStandsInIt() throws Exception {
        List<PlateView> plates = plates(List.of("Ada Marsh"));
        Path pdf = Files.write(folder.resolve("plain.pdf"), bytes(plates));
        // A font's ligatures are read as characters of their own.
        String read = Normalizer.normalize(String.join(" ", Poppler.text(pdf)), Normalizer.Form.NFKC)
                .replaceAll("\\s+", "");
        String html = SampleSheet.html(
                SampleSheet.head("harbour", plates, SampleSheet.problems(), List.of(new LeftOut(14, "", "bad"))),
                plates);
        Document document = Jsoup.parse(html);
        document.select("script, .out").remove();
        for (Element element : document.select("main p, main li, main dd, main h2, main h3, main text")) {
            for (String word : element.text().split("[\\s\u00A0]+")) {
                assertTrue(
                        read.contains(Normalizer.normalize(word, Normalizer.Form.NFKC)),
                        "'" + word + "' of: " + element.text());
            }
        }
    }

    @Test
    void theSamePlatesGiveTheSameBytesAndNoDate() throws Exception {
        byte[] first = bytes(plates(NAMES));
        assertArrayEquals(first, bytes(plates(NAMES)));
        String text = new String(first, StandardCharsets.ISO_8859_1);
        assertFalse(text.contains("CreationDate") || text.contains("ModDate") || text.contains("Metadata"));
    }

    /** Three letters beh, each with a tail of its own where it stands alone; and beh then alef, of which only alef is tall. */
    @Test
    void arabicIsDrawnJoinedAndFromTheRight() throws Exception {
        FontLibrary fonts = FontLibrary.open(List.of(), false, new Problems());
        try (PDDocument document = new PDDocument()) {
            PaperType type = new PaperType(document, PaperType.SANS, PaperType.NORMAL, fonts);
            double joined = type.outline("\u0628\u0628\u0628").advance();
            double apart = type.outline("\u0628\u200C\u0628\u200C\u0628").advance();
            assertTrue(joined < 0.8 * apart, joined + " ems joined, " + apart + " apart");
            TypesetText word = type.outline("\u0628\u0627");
            for (Polyline line : word.outline().flatten(0.01)) {
                for (int i = 0; i < line.size(); i++) {
                    boolean ofAlef = line.y(i) > 0.5;
                    assertFalse(ofAlef && line.x(i) > word.advance() / 2, "alef at the right");
                }
            }
            assertTrue(word.ink().maxY() > 0.5, "alef is there");
            assertFalse(type.isPlain("\u0628"));
            assertTrue(type.isPlain(
                    "Zdzis\u0142aw \u03A3\u03BF\u03C6\u03AF\u03B1 \u041E\u043A\u0441\u0430\u043D\u0430 \u2192"));
        }
    }

    @Test
    void whatNoFontHasIsABoxAndWhatNoFileMayHoldIsReplaced() throws Exception {
        byte[] pdf = bytes(plates(List.of("\u5C71\u7530", "bell\u0007", "\uD83D\uDE00 ok")));
        assertTrue(pdf.length > 10_000);
    }
}
