package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Given an order whose names are the Big List of Naughty Strings (source and licence: README.md beside the data), then each
 * row is either an item, its value unchanged, or told as an error by its line.
 */
class NaughtyOrderTest {
    private static final String TEMPLATE = """
            <svg xmlns="http://www.w3.org/2000/svg" width="30mm" height="12mm" viewBox="0 0 30 12">
              <rect id="box" class="guide" x="1" y="1" width="28" height="10"/>
              <text class="engrave" data-fit="box" data-min-height="0.05" data-squeeze="0.5" data-lines="3"
                    x="15" y="8" font-size="4" font-family="DejaVu Sans">${name}</text>
            </svg>
            """;
    private static final Duration PATIENCE = Duration.ofMinutes(5);

    @TempDir
    private Path folder;

    @Test
    void eachRowIsMarkedOrReported() throws IOException {
        Map<Integer, String> byLine = new TreeMap<>();
        StringBuilder order = new StringBuilder("Name\n");
        int line = 2;
        for (String text : strings()) {
            byLine.put(line, text);
            order.append(PreparedJob.quoted(text)).append('\n');
            line += 1 + (int) text.chars().filter(c -> c == '\n').count();
        }
        StringBuilder tray = new StringBuilder("slot,x_mm,y_mm,rotation_deg,width_mm,height_mm,usable\n");
        for (int i = 0; i < 50; i++) {
            tray.append("P" + i + "," + i % 5 * 32 + "," + i / 5 * 14 + ",0,30,12,true\n");
        }
        PreparedJob job = new PreparedJob(folder)
                .file("order.csv", order.toString())
                .file("tag.svg", TEMPLATE)
                .file("tray.csv", tray.toString());
        int status = assertTimeoutPreemptively(
                PATIENCE,
                () -> job.prepare(
                        "--template",
                        "tag.svg",
                        "--jig",
                        "tray.csv",
                        "--recipe",
                        "steel-tag",
                        "--lens",
                        "long-200",
                        "--skip-bad-rows"));
        assertEquals(0, status, job::said);
        assertFalse(job.said().contains("fault of its own"), job::said);

        Set<Integer> marked = new TreeSet<>();
        for (Map<String, String> item : job.table("items.csv")) {
            int row = Integer.parseInt(item.get("row"));
            marked.add(row);
            assertEquals(byLine.get(row), item.get("Name"), "line " + row);
        }
        Set<Integer> refused = new TreeSet<>();
        for (Map<String, String> problem : job.table("problems.csv")) {
            if (problem.get("severity").equals("error")) {
                refused.add(Integer.parseInt(problem.get("line")));
            }
        }
        assertTrue(marked.size() > 350 && refused.size() > 40, marked.size() + " and " + refused.size());
        Set<Integer> both = new TreeSet<>(marked);
        both.addAll(refused);
        assertEquals(byLine.keySet(), both);
        both.retainAll(marked);
        both.retainAll(refused);
        assertEquals(Set.of(), both);
    }

    private static String[] strings() throws IOException {
        try (InputStream in = NaughtyOrderTest.class.getResourceAsStream("/dev/quoin/naughty/blns.json")) {
            return new ObjectMapper().readValue(in, String[].class);
        }
    }
}
