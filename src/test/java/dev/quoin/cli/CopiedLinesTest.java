package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.browser.Chromium;
import dev.quoin.cli.Program.Ended;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Given eight tags on three plates (1 2 4, 5 8, 3 6 7) and a run sheet on which 2, 5 and 8 are ticked as failed: the lines
 * that the page in the browser offers run, inside the run folder, as they stand.
 */
@Tag("browser")
class CopiedLinesTest {
    private static final String TICKS = """
            <script>
            var now = Date.now, clock = document.querySelector("#plate-2 .clock button");
            clock.click();
            Date.now = function () { return now() + 461000; };
            clock.click();
            Date.now = now;
            ["2", "5", "8"].forEach(function (item) {
              document.querySelector('tr[data-item="' + item + '"] [data-mark=failed]').click();
            });
            document.querySelectorAll(".command input").forEach(function (line) {
              document.body.insertAdjacentHTML("beforeend", "<pre class=copied></pre>");
              document.body.lastElementChild.textContent = line.value;
            });
            </script></body>""";

    @TempDir
    private Path folder;

    private Path run;
    private List<String> lines;

    @BeforeEach
    void tickTheSheet() throws Exception {
        run = SmallJob.in(folder).prepared();
        String sheet = Files.readString(run.resolve("run-sheet.html")).replace("</body>", TICKS);
        String dom = new Chromium(folder).dom(sheet);
        lines = Pattern.compile("<pre class=\"copied\">([^<]*)</pre>")
                .matcher(dom)
                .results()
                .map(MatchResult::group)
                .map(text -> text.replaceAll("<[^>]*>", ""))
                .toList();
        assertEquals(4, lines.size(), "a line for each of three plates, and that for the failed items");
    }

    @Test
    void theRecordHasJustThePlatesTheTimeAndTheItemsOfTheLines() throws Exception {
        lines.stream().filter(line -> line.startsWith("quoin done ")).forEach(this::runs);
        List<String> log = Files.readAllLines(run.resolve("record/log.csv"));
        assertEquals(
                List.of("done,1,,,", "failed,1,2,B,", "done,2,,,461", "failed,2,5,A,", "failed,2,8,B,", "done,3,,,"),
                log.stream().skip(1).map(CopiedLinesTest::withoutTheTime).toList());
    }

    @Test
    void theReprintHasJustTheFailedItems() throws Exception {
        lines.stream().filter(line -> line.startsWith("quoin reprint ")).forEach(this::runs);
        assertEquals(List.of("2"), items(1));
        assertEquals(List.of("5", "8"), items(2));
        assertTrue(Files.notExists(run.resolve("reprints/reprint-003.csv")));
    }

    private void runs(String line) {
        String[] words = line.split(" ");
        Ended ended =
                new Program(run).run(List.of(words).subList(1, words.length).toArray(String[]::new));
        assertEquals(0, ended.status(), line + ": " + ended.err());
    }

    private List<String> items(int reprint) throws Exception {
        return Files.readAllLines(run.resolve("reprints/reprint-00" + reprint + ".csv")).stream()
                .skip(1)
                .map(row -> row.substring(0, row.indexOf(',')))
                .toList();
    }

    /** Event, plate, item, slot, seconds. */
    private static String withoutTheTime(String row) {
        String[] cells = row.split(",", -1);
        return String.join(",", List.of(cells).subList(1, 6));
    }
}
