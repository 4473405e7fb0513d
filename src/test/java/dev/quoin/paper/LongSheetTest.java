package dev.quoin.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.browser.Chromium;
import dev.quoin.browser.Poppler;
import dev.quoin.lettering.FontLibrary;
import dev.quoin.problem.Problems;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sheet of 500 plates, 8,500 items: opened by a browser, and laid out as PDF. Times are printed, and asserted with room. */
@Tag("slow")
class LongSheetTest {
    private static final int PLATES = 500;

    @TempDir
    private Path folder;

    private static List<PlateView> plates() {
        List<PlateView> plates = new ArrayList<>();
        for (int i = 0; i < PLATES; i++) {
            plates.add(SampleSheet.tray(
                    i + 1, SampleSheet.FIRST_ITEM + 17 * i, List.of("Ada Marsh", "Wilhelmina Oosterhuis")));
        }
        return plates;
    }

    private static SheetHead head(List<PlateView> plates) {
        return SampleSheet.head("long", plates, List.of(), List.of());
    }

    /** The page's own clock when all of it is laid out and its script has run, from when it began to load. */
    @Test
    void aBrowserOpensItInLessThanThreeSeconds() throws Exception {
        String html = SampleSheet.html(head(plates()), plates());
        String timed = html.replace(
                "</body>",
                "<pre id=\"found\"></pre><script>document.body.offsetHeight;"
                        + "document.getElementById('found').textContent=Math.round(performance.now());</script></body>");
        Matcher found = Pattern.compile("<pre id=\"found\">(\\d+)<").matcher(new Chromium(folder).domInRealTime(timed));
        assertTrue(found.find());
        int milliseconds = Integer.parseInt(found.group(1));
        System.out.println("500 plates, " + html.length() / 1000 + " kB, open in " + milliseconds + " ms");
        assertTrue(milliseconds < 3000 * 3, milliseconds + " ms");
    }

    @Test
    void itIsLaidOutAsPdfPlateByPlate() throws Exception {
        List<PlateView> plates = plates();
        Path pdf = folder.resolve("long.pdf");
        long begun = System.nanoTime();
        try (RunSheetPdf sheet = new RunSheetPdf("long", FontLibrary.open(List.of(), false, new Problems()));
                OutputStream out = Files.newOutputStream(pdf)) {
            for (PlateView plate : plates) {
                sheet.plate(plate);
            }
            sheet.save(out, head(plates), new SheetFoot(List.of()));
        }
        double seconds = (System.nanoTime() - begun) / 1e9;
        System.out.println("500 plates as PDF in " + seconds + " s, " + Files.size(pdf) / 1000 + " kB");
        Matcher pages = Pattern.compile("Pages: +(\\d+)").matcher(Poppler.info(pdf));
        assertTrue(pages.find());
        assertTrue(Integer.parseInt(pages.group(1)) > 2 * PLATES);
        String all = String.join("\n", Poppler.text(pdf));
        assertEquals(2, all.split("\\b" + (SampleSheet.FIRST_ITEM + 8499) + "\\b", -1).length - 1);
    }
}
