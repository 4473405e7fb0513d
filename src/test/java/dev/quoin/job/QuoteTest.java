package dev.quoin.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Given a job of seven pieces, the built-in lenses and some jigs, then this quotation. */
class QuoteTest {
    private static final String HEADER = "slot,x_mm,y_mm,width_mm,height_mm\n";

    @TempDir
    Path folder;

    private SmallJob job;
    private Problems problems = new Problems();

    @BeforeEach
    void given() throws IOException {
        job = new SmallJob(folder, "Name,Number\nAska,7\n").with(JobKey.QUANTITY_COLUMN, "Number");
    }

    private Outcome<Quotation> quote(String... otherJigs) throws IOException {
        problems = new Problems();
        return new Quote(job.settings(problems), List.of(otherJigs), Progress.SILENT).run(problems);
    }

    @Test
    void eachLineIsWhatPreparingWithThatLensComesTo() throws IOException {
        job.file("tray.csv", HEADER + "A,-80,0,10,10\nB,0,0,10,10\nC,80,0,10,10\n");
        Quotation quotation = quote().result().orElseThrow();
        assertEquals(
                List.of("short-100", "long-200"),
                quotation.lines().stream().map(QuoteLine::lens).toList());
        for (QuoteLine line : quotation.lines()) {
            RunSummary prepared = job.with(JobKey.LENS, line.lens()).prepare().orElseThrow();
            assertEquals(prepared.plates(), line.plates());
            assertEquals(prepared.marking(), line.marking());
            assertEquals(prepared.handling(), line.handling());
        }
        assertEquals(7, quotation.items());
        assertEquals(Map.of(RunSummary.UNNAMED, 7), quotation.blanks());
    }

    @Test
    void allLensesAreComparedButOneThatThereIsNotIsAnError() throws IOException {
        job.with(JobKey.LENS, "long-200");
        assertEquals(2, quote().result().orElseThrow().lines().size());
        job.with(JobKey.LENS, "nosuch");
        Outcome<Quotation> refused = quote();
        assertTrue(refused.result().isEmpty());
        assertEquals(
                List.of("unknown lens 'nosuch'"),
                refused.problems().stream()
                        .filter(Problem::isError)
                        .map(Problem::message)
                        .toList());
    }

    @Test
    void theSmallestFieldThatReachesEverySlotIsTaken() throws IOException {
        Quotation quotation = quote().result().orElseThrow();
        assertEquals("short-100", quotation.choice().orElseThrow().lens());
        assertEquals("the smallest field, so the finest spot, that reaches every slot", quotation.reason());
    }

    @Test
    void aLensThatReachesFewerSlotsNeedsMorePlates() throws IOException {
        job.file("tray.csv", HEADER + "A,-80,0,10,10\nB,0,0,10,10\nC,80,0,10,10\n");
        List<QuoteLine> lines = quote().result().orElseThrow().lines();
        assertEquals(1, lines.get(0).reached());
        assertEquals(3, lines.get(0).usable());
        assertEquals(7, lines.get(0).plates());
        assertEquals(3, lines.get(1).reached());
        assertEquals(3, lines.get(1).plates());
    }

    /** Focal lengths of 160 and 290 mm: the fluence goes with the square of their ratio. */
    @Test
    void theFluenceIsAgainstTheRecipesOwnLens() throws IOException {
        List<QuoteLine> lines = quote().result().orElseThrow().lines();
        double shorter = lines.get(0).fluence().get("steel-tag");
        double longer = lines.get(1).fluence().get("steel-tag");
        assertEquals(290.0 * 290 / (160 * 160), shorter / longer, 1e-9);
        assertTrue(shorter == 1 || longer == 1);
    }

    @Test
    void anotherJigIsComparedAndTheFewestHoursWin() throws IOException {
        job.file("pair.csv", HEADER + "A,-20,0,10,10\nB,20,0,10,10\n");
        Quotation quotation = quote("pair.csv").result().orElseThrow();
        assertEquals(
                List.of("tray", "tray", "pair", "pair"),
                quotation.lines().stream().map(QuoteLine::jig).toList());
        assertEquals("tray", quotation.choice().orElseThrow().jig());
        assertTrue(quotation.reason().endsWith("; the fewest hours of all jigs"));
    }

    @Test
    void anotherJigThatCannotTakeTheItemsIsSaidToBeUnfit() throws IOException {
        job.file("tiny.csv", HEADER + "A,0,0,1,1\n");
        Quotation quotation = quote("tiny.csv").result().orElseThrow();
        assertEquals(2, quotation.lines().size());
        assertEquals(
                Map.of(
                        "tiny.csv",
                        "order.csv:2: its ink stands out of every usable pocket of the jig tiny, by 0.5 mm at the left (template template.svg)"),
                quotation.unfit());
    }

    @Test
    void aJigOutOfReachOfALensIsRefusedThroughIt() throws IOException {
        job.file("tray.csv", HEADER + "A,-80,0,10,10\nB,80,0,10,10\n");
        Quotation quotation = quote().result().orElseThrow();
        assertTrue(quotation.lines().get(0).refusal().orElseThrow().startsWith("no usable slot"));
        assertEquals("long-200", quotation.choice().orElseThrow().lens());
    }

    @Test
    void nothingIsWrittenAndErrorsOfTheJobAreTold() throws IOException {
        quote();
        assertFalse(Files.exists(job.run()));
        assertTrue(job.with(JobKey.RECIPE, "steel-tg").prepare().isEmpty());
        assertTrue(quote().result().isEmpty());
        assertTrue(problems.sorted().stream().map(Problem::message).anyMatch(text -> text.contains("steel-tg")));
    }
}
