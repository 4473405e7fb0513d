package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.quoin.browser.Poppler;
import dev.quoin.cli.Program.Ended;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A run of three plates, hatched so that its files hold every stroke: what the screen, the sheet, the tables and the plate
 * files say of it, each read on its own (jsoup, poppler, Jackson), is the same.
 */
class AgreementTest {
    /** Seconds are written with 4 decimals, lengths with 3. */
    private static final double SECONDS = 1e-4;

    @TempDir
    private Path folder;

    private Path run;
    private JsonNode screen;
    private Document sheet;
    private List<Map<String, String>> plates;
    private List<Map<String, String>> items;

    @BeforeEach
    void prepare() throws IOException {
        Path job = SmallJob.in(folder).folder();
        Ended ended = new Program(job)
                .run(
                        "prepare",
                        ".",
                        "--out",
                        "run",
                        "--hatched",
                        "--sheet",
                        "html,pdf",
                        "--packing-by",
                        "Colour",
                        "--spoilage",
                        "2",
                        "--json");
        assertEquals(0, ended.status(), ended.err());
        run = job.resolve("run");
        screen = new ObjectMapper().readTree(ended.out());
        sheet = Jsoup.parse(Files.readString(run.resolve("run-sheet.html")));
        plates = CsvText.read(run.resolve("plates.csv")).rows();
        items = CsvText.read(run.resolve("items.csv")).rows();
    }

    @Test
    void platesAndItemsAreAsMany() throws Exception {
        assertEquals(plates.size(), screen.get("plates").asInt());
        assertEquals(items.size(), screen.get("items").asInt());
        assertEquals(plates.size() + "", fact("Plates").text());
        assertEquals(items.size() + "", fact("Items").text());
        assertEquals(plates.size(), sheet.select("section.plate[data-plate]").size());
        assertEquals(plates.size(), sheet.select(".index tbody tr").size());
        assertEquals(
                plates.stream().map(row -> row.get("file")).toList(),
                sheet.select(".index td.file").eachText());
        assertEquals(
                items.size(),
                plates.stream()
                        .mapToInt(row -> Integer.parseInt(row.get("items")))
                        .sum());
        String blanks = sheet.select(".checklist.one li").text();
        assertEquals(
                screen.get("blanks").get("steel-40x24").asInt() + " \u00D7 steel-40x24, stainless-steel, and "
                        + screen.get("spares").get("steel-40x24").asInt() + " to spare",
                blanks);
        assertTrue(pdf().contains(blanks), pdf());
    }

    @Test
    void timesAddUpAndAreTheSame() throws Exception {
        double sum = 0;
        for (Map<String, String> row : plates) {
            Element plate = plate(row.get("plate"));
            List<Double> times = seconds(plate.select(".plate-facts data").eachAttr("value"));
            assertEquals(number(row, "total_s"), times.get(0), SECONDS);
            assertEquals(number(row, "marking_s"), times.get(1), SECONDS);
            assertEquals(number(row, "handling_s"), times.get(2), SECONDS);
            sum += times.get(0) + (times.size() > 3 ? times.get(3) : 0);
            assertEquals(
                    sum, seconds(indexRow(row).select("data").eachAttr("value")).get(1), 5 * SECONDS);
            String said = plate.select(".plate-facts p").get(1).text();
            assertTrue(pdf().contains(said.substring(0, said.indexOf(':'))), said);
        }
        double whole = Double.parseDouble(fact("Time in all").select("data").attr("value"));
        assertEquals(whole, sum, 5 * SECONDS);
        assertEquals(whole, Double.parseDouble(sheet.body().attr("data-seconds")), SECONDS);
        assertEquals(whole, screen.get("totalSeconds").asDouble(), 0.001);
        assertTrue(pdf().contains(fact("Time in all").text()));
    }

    /** An item's seconds are its strokes and the jumps to and in it: together the beam's work of its plate. */
    @Test
    void theItemsTimesAreTheirPlatesWork() {
        for (Map<String, String> row : plates) {
            double sum = items.stream()
                    .filter(item -> item.get("plate").equals(row.get("plate")))
                    .mapToDouble(item -> number(item, "seconds"))
                    .sum();
            assertEquals(number(row, "marking_s"), sum, 10 * SECONDS, "plate " + row.get("plate"));
        }
    }

    @Test
    void eachItemLiesInItsSlotInTableSheetPictureAndFile() throws Exception {
        for (Map<String, String> item : items) {
            Element plate = plate(item.get("plate"));
            String number = item.get("item");
            Element tableRow = plate.selectFirst("tr[data-item=" + number + "]");
            assertEquals(item.get("slot"), tableRow.select(".slot-id").text());
            assertEquals(item.get("row"), tableRow.select("td.number").text());
            assertEquals(
                    item.get("slot"),
                    plate.selectFirst("[data-picture-item=" + number + "]").attr("data-slot"));
            Document file = svg(item.get("plate"));
            String name = String.format("step-1-item-%04d", Integer.parseInt(number));
            assertEquals(1, file.select("#" + name).size(), name);
            Element packed =
                    sheet.selectFirst("[data-check=packed-" + number + "]").closest("tr");
            assertEquals(item.get("plate"), packed.select("td.number").text());
            assertEquals(item.get("slot"), packed.select("td").last().text());
        }
        for (Map<String, String> row : plates) {
            TreeSet<String> inFile = new TreeSet<>();
            svg(row.get("plate"))
                    .select("g[id*=-item-]")
                    .forEach(group -> inFile.add(group.id().substring(12)));
            assertEquals(Integer.parseInt(row.get("items")), inFile.size());
        }
    }

    /** The tag's outline is 18 x 8 mm around its centre, so that its middle is where the item lies. */
    @Test
    void itemsLieWhereTheTableSays() throws Exception {
        for (Map<String, String> item : items) {
            String name = String.format("step-2-item-%04d", Integer.parseInt(item.get("item")));
            List<double[]> points =
                    strokes(svg(item.get("plate")).selectFirst("#" + name)).get(0);
            double x =
                    points.stream().mapToDouble(p -> p[0]).summaryStatistics().getMax();
            double left =
                    points.stream().mapToDouble(p -> p[0]).summaryStatistics().getMin();
            double y =
                    points.stream().mapToDouble(p -> p[1]).summaryStatistics().getMax();
            double top =
                    points.stream().mapToDouble(p -> p[1]).summaryStatistics().getMin();
            assertEquals(number(item, "x_mm"), (x + left) / 2 - 50, 0.0011, name);
            assertEquals(number(item, "y_mm"), 50 - (y + top) / 2, 0.0011, name);
        }
    }

    /** Step 1 is in the file pass by pass; the outline of step 2 is marked twice. */
    @Test
    void strokesAndTheirLengthsAreThoseOfTheFile() throws Exception {
        for (Map<String, String> row : plates) {
            double length = 0;
            int strokes = 0;
            for (Element group : svg(row.get("plate")).select("g[id*=-item-]")) {
                int passes = group.id().startsWith("step-2") ? 2 : 1;
                for (List<double[]> stroke : strokes(group)) {
                    length += passes * length(stroke);
                    strokes += passes;
                }
            }
            assertEquals(Integer.parseInt(row.get("strokes")), strokes);
            assertEquals(number(row, "mark_mm"), length, 0.0005 * strokes, "plate " + row.get("plate"));
        }
    }

    /** The sheet has seconds: times the speeds they are millimetres, but for what corners took, 90 us for 180 degrees. */
    @Test
    void lengthsOfMarksAndJumpsAreTheTimesOnTheSheet() throws Exception {
        double jumpSpeed = machine("jump_speed_mm_s");
        double corner = machine("corner_us") * 1e-6 / Math.PI;
        for (Map<String, String> row : plates) {
            Element plate = plate(row.get("plate"));
            double marks = 0;
            double jumps = 0;
            for (Element step : plate.select(".steps tbody tr")) {
                String name = step.selectFirst("th").ownText();
                double speed = Double.parseDouble(step.select("td").get(3).text());
                Element times = plate.select(".times tbody tr").stream()
                        .filter(line -> line.selectFirst("th").text().equals(name))
                        .findFirst()
                        .orElseThrow();
                List<Double> seconds = seconds(times.select("data").eachAttr("value"));
                int number = Integer.parseInt(name.substring(0, 1));
                double turned = turned(row.get("plate"), number) * (number == 2 ? 2 : 1);
                marks += (seconds.get(0) - turned * corner) * speed;
                jumps += seconds.get(1) * jumpSpeed;
            }
            assertEquals(number(row, "mark_mm"), marks, 0.3, "plate " + row.get("plate"));
            assertEquals(number(row, "jump_mm"), jumps, 0.5, "plate " + row.get("plate"));
        }
    }

    private double machine(String setting) throws IOException {
        return CsvText.read(run.resolve("inputs/shop/machine.csv")).rows().stream()
                .filter(row -> row.get("setting").equals(setting))
                .mapToDouble(row -> number(row, "value"))
                .findFirst()
                .orElseThrow();
    }

    /** By how much the strokes of a step turn in all, radians. */
    private double turned(String plate, int step) throws IOException {
        double sum = 0;
        for (Element group : svg(plate).select("g[id^=step-" + step + "-item-]")) {
            for (List<double[]> stroke : strokes(group)) {
                sum += turned(stroke);
            }
        }
        return sum;
    }

    private static double turned(List<double[]> stroke) {
        double sum = 0;
        int last = stroke.size() - 1;
        boolean closed = last > 1 && stroke.get(0) == stroke.get(last);
        for (int i = 1; i < (closed ? last + 1 : last); i++) {
            double[] before = stroke.get(i - 1);
            double[] at = stroke.get(i);
            double[] after = stroke.get(i == last ? 1 : i + 1);
            double turn =
                    Math.atan2(after[1] - at[1], after[0] - at[0]) - Math.atan2(at[1] - before[1], at[0] - before[0]);
            sum += Math.abs(Math.IEEEremainder(turn, 2 * Math.PI));
        }
        return sum;
    }

    @Test
    void thePdfHasEachItemOnceInATableOnceInAPictureAndOnceInThePackingList() throws Exception {
        Map<String, Integer> found = new TreeMap<>();
        for (String line : pdf().split("\n")) {
            Matcher row = Pattern.compile("^ *([A-D]) +(\\d+) +(Ada|Bea|Cy|Dot|Eve) +(\\d+) *$")
                    .matcher(line);
            if (row.matches()) {
                found.merge(row.group(1) + row.group(2), 1, Integer::sum);
            }
        }
        Map<String, Integer> expected = new TreeMap<>();
        items.forEach(item -> expected.put(item.get("slot") + item.get("item"), 1));
        assertEquals(expected, found);
    }

    private String pdf() throws IOException {
        try {
            return String.join("\n", Poppler.text(run.resolve("run-sheet.pdf"))).replaceAll(" +", " ");
        } catch (InterruptedException e) {
            throw new IOException(e);
        }
    }

    private Element fact(String name) {
        return sheet.select(".facts div").stream()
                .filter(fact -> fact.selectFirst("dt").text().equals(name))
                .findFirst()
                .orElseThrow()
                .selectFirst("dd");
    }

    private Element plate(String number) {
        return sheet.selectFirst("section[data-plate=" + number + "]");
    }

    private Element indexRow(Map<String, String> plate) {
        return sheet.selectFirst("[data-check=plate-" + plate.get("plate") + "]")
                .closest("tr");
    }

    private Document svg(String plate) throws IOException {
        Path file = run.resolve(String.format("plate-%03d.svg", Integer.parseInt(plate)));
        return Jsoup.parse(Files.readString(file), "", Parser.xmlParser());
    }

    private static List<Double> seconds(List<String> values) {
        return values.stream().map(Double::valueOf).toList();
    }

    private static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.get(column));
    }

    /** The points of each stroke of straight lines, the first again at the end of a closed one. */
    private static List<List<double[]>> strokes(Element group) {
        List<List<double[]>> strokes = new ArrayList<>();
        for (Element path : group.select("path")) {
            for (String part : path.attr("d").split("(?=M)")) {
                List<double[]> points = new ArrayList<>();
                Matcher point = Pattern.compile("(-?[0-9.]+) (-?[0-9.]+)").matcher(part);
                while (point.find()) {
                    points.add(new double[] {Double.parseDouble(point.group(1)), Double.parseDouble(point.group(2))});
                }
                if (part.endsWith("Z")) {
                    points.add(points.get(0));
                }
                strokes.add(points);
            }
        }
        return strokes;
    }

    private static double length(List<double[]> stroke) {
        double length = 0;
        for (int i = 1; i < stroke.size(); i++) {
            length += Math.hypot(stroke.get(i)[0] - stroke.get(i - 1)[0], stroke.get(i)[1] - stroke.get(i - 1)[1]);
        }
        return length;
    }
}
