package dev.quoin.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the sheet and the check say of light and time, for squares of 2 mm on the built-in machine and lenses. */
class SheetFiguresTest {
    private static final String THIN = """
            <svg xmlns="http://www.w3.org/2000/svg" width="8mm" height="8mm" viewBox="0 0 8 8">
              <rect class="engrave" x="1" y="1" width="6" height="%s"/>
            </svg>
            """;

    @TempDir
    Path folder;

    private SmallJob job;

    @BeforeEach
    void given() throws IOException {
        job = new SmallJob(folder, "Name\nAska\nBirk\n");
    }

    private String sheet() throws IOException {
        job.prepare();
        return Files.readString(job.run().resolve("run-sheet.html"));
    }

    /**
     * By hand, built-in machine: P = 45 W, 60 kHz, 200 ns, 1400 mm/s, M2 1.4, 1064 nm, f 290 mm, D 7 mm: spot 4 x 1.4 x
     * 1.064e-3 x 290 / (pi x 7) = 0.0786 mm; E = 0.75 mJ; E / tau = 3.75 kW; 8 E / (pi d^2) = 30.9 J/cm2; pulse overlap 1 -
     * 23.33 um / 78.6 um = 70 %; line overlap 1 - 50 / 78.6 = 36 %; dose 45 / (1400 x 0.05) = 0.643 J/mm2.
     */
    @Test
    void theSheetHasTheOpticsOfEachStepOnce() throws IOException {
        String sheet = sheet();
        String table = sheet.substring(sheet.indexOf("<table class=\"small exposures\">"));
        table = table.substring(0, table.indexOf("</table>"));
        assertTrue(table.contains("spot 0.079 mm"), table);
        assertTrue(table.contains("depth of focus 6.51 mm"), table);
        Matcher cells = Pattern.compile("1 engrave</th>((?:<td class=\"number\">[^<]*</td>)*)")
                .matcher(table);
        assertTrue(cells.find(), table);
        assertEquals(
                "0.75 3.75 30.9 70 36 0.643",
                cells.group(1).replaceAll("<[^>]*>", " ").strip().replaceAll(" +", " "));
        assertEquals(1, sheet.split("class=\"small exposures\"", -1).length - 1);
    }

    @Test
    void theKindsOfTimeAddUpToEachStep() throws IOException {
        String sheet = sheet();
        Matcher row = Pattern.compile(
                        "<tr><th scope=\"row\">1 engrave</th>((?:<td class=\"number\"><data value=\"[^\"]*\">"
                                + "[^<]*</data></td>){5})")
                .matcher(sheet);
        assertTrue(row.find(), sheet);
        double[] times = Pattern.compile("value=\"([^\"]*)\"")
                .matcher(row.group(1))
                .results()
                .mapToDouble(value -> Double.parseDouble(value.group(1)))
                .toArray();
        assertEquals(times[3], times[0] + times[1] + times[2], 2e-4);
        assertTrue(times[0] > 0 && times[1] > 0 && times[2] > 0);
    }

    @Test
    void regionsHaveANoteOnSeams() throws IOException {
        job.with(JobKey.RECIPE, "steel-fine").with(JobKey.LENS, "short-100");
        assertTrue(sheet().contains("seams may show where regions meet"));
    }

    @Test
    void checkSaysTheFiguresOfEachStepAsNotes() throws IOException {
        Problems problems = new Problems();
        List<Problem> found =
                new Check(job.settings(problems), Progress.SILENT).run(problems).problems();
        String text = found.get(0).toString();
        assertTrue(
                text.contains(
                        "note: recipe 'steel-tag', step 1 (engrave): lens 'long-200': spot 0.079 mm, depth of focus "
                                + "6.51 mm, pulse energy 0.75 mJ, peak power 3.75 kW, peak fluence 30.9 J/cm2, pulse overlap 70 %, "
                                + "line overlap 36 %, dose a pass 0.643 J/mm2"),
                text);
    }

    @Test
    void aBarThinnerThanTheSpotIsToldWithItsWidth() throws IOException {
        job.file("template.svg", THIN.formatted("0.05")).prepare();
        assertTrue(
                job.problems().contains("its finest detail is 0.05 mm, the spot of lens 'long-200' is 0.079 mm"),
                job.problems());
    }

    @Test
    void aBarAsWideAsTheSpotIsNot() throws IOException {
        job.file("template.svg", THIN.formatted("0.085")).prepare();
        assertEquals("", job.problems());
    }

    @Test
    void aMarkThatTheInsetSwallowsIsToldOnceForAllItems() throws IOException {
        job.with(JobKey.RECIPE, "steel-fine").with(JobKey.LENS, "short-100");
        job.file("template.svg", THIN.formatted("0.018")).prepare();
        assertTrue(
                job.problems().contains("0.018 mm wide, of which an inset of 0.01 mm leaves nothing"), job.problems());
        assertTrue(
                job.problems()
                        .contains("no line of it is left on item 1 and 1 more, which has marks for it; set inset_mm"),
                job.problems());
    }
}
