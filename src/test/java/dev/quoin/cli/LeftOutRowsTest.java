package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Many errors are told in one go; with {@code --skip-bad-rows} the good rows are prepared, and the bad ones named first. */
class LeftOutRowsTest {
    @TempDir
    Path folder;

    @Test
    void errorsAreToldInTheOrderOfThePlacesInTheFile() {
        JobFolder job = new JobFolder(folder)
                .order("Name,Number", "\u0F00,1", "Ada,one", ",1", "Grace,1")
                .set("quantity-column", "Number");
        QuoinRun run = job.prepare();
        assertEquals(1, run.status());
        assertEquals(
                List.of("order.csv:2:1:", "order.csv:3:2:", "order.csv:4:1:", "nothing was written:"),
                run.err().stream()
                        .map(line -> line.substring(0, line.indexOf(": ") + 1))
                        .toList());
    }

    @Test
    void afterAThousandProblemsTheRestIsCounted() {
        List<String> lines = new ArrayList<>(List.of("Name,Town"));
        for (int i = 0; i < 1_203; i++) {
            lines.add(",Street " + i);
        }
        QuoinRun run = new JobFolder(folder).order(lines.toArray(String[]::new)).prepare();
        assertEquals(1, run.status());
        assertEquals(1_002, run.err().size());
        assertTrue(
                run.err().get(999).startsWith("order.csv:1001:1: Name: "),
                run.err().get(999));
        assertEquals(
                List.of("... and 203 more", "nothing was written: 1203 errors"),
                run.err().subList(1_000, 1_002));
        assertFalse(Files.exists(folder.resolve("runs")));
    }

    @Test
    void theGoodRowsArePreparedAndKeepTheirNumbers() throws Exception {
        JobFolder job = new JobFolder(folder)
                .order("Name,Number", "Ada,2", "Grace,many", ",3", "Mary,2")
                .set("quantity-column", "Number");
        QuoinRun run = job.prepare("--skip-bad-rows");
        assertEquals(0, run.status());
        // A quantity that cannot be read counts as one: item 3; the row without a name has items 4 to 6.
        assertEquals(
                List.of("1,2,1", "2,2,2", "7,5,1", "8,5,2"),
                Files.readAllLines(job.run().resolve("items.csv")).stream()
                        .skip(1)
                        .map(line -> line.substring(0, line.indexOf(',', 4)))
                        .toList());
        assertTrue(
                run.out().contains("left out    2 rows with errors; they are named first on the run sheet"),
                run.out().toString());
        assertTrue(run.out().get(run.out().size() - 1).startsWith("look first  the 2 problems above, then "));
    }

    @Test
    void whatIsLeftOutStandsBeforeAllElseOnTheSheet() throws Exception {
        JobFolder job = new JobFolder(folder).order("Name,Town", "Ada,London", ",Bath", "Mary,Lyme");
        assertEquals(0, job.prepare("--skip-bad-rows").status());
        String sheet = Files.readString(job.run().resolve("run-sheet.html"));
        String body = sheet.substring(sheet.indexOf("<body"));
        int leftOut = body.indexOf("name is empty, and the template uses it");
        assertTrue(leftOut > 0, "the sheet does not say what is left out");
        assertTrue(leftOut < body.indexOf("plate-001.svg"), "the plates come first");
    }

    @Test
    void whereNoRowIsLeftNothingIsWritten() {
        QuoinRun run = new JobFolder(folder).order("Name,Town", ",Bath").prepare("--skip-bad-rows");
        assertEquals(1, run.status());
        assertEquals(
                List.of(
                        "order.csv: no row is left to prepare; correct the errors",
                        "order.csv:2:1: Name: name is empty, and the template uses it; fill it in, or permit it: ${name!}",
                        "nothing was written: 2 errors"),
                run.err());
        assertFalse(Files.exists(folder.resolve("runs")));
    }

    @Test
    void anErrorOfTheWholeJobIsNoBadRow() {
        QuoinRun run = new JobFolder(folder).set("tempalte", "tag.svg").prepare("--skip-bad-rows");
        assertEquals(1, run.status());
        assertEquals(
                List.of(
                        "job.properties:5: unknown key 'tempalte'; did you mean 'template'?",
                        "nothing was written: 1 error"),
                run.err());
    }

    @Test
    void aCheckSaysTheSameAndWritesNothing() {
        JobFolder job = new JobFolder(folder).order("Name,Town", "Ada,London", ",Bath");
        QuoinRun check = job.quoin("check", "job");
        QuoinRun prepare = job.prepare();
        assertEquals(1, check.status());
        assertEquals(prepare.err().subList(0, 1), check.err());
        assertEquals(List.of("job: 1 error"), check.out());
        assertFalse(Files.exists(folder.resolve("runs")));
    }
}
