package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.quoin.geometry.Polyline;
import dev.quoin.store.PlateMark;
import dev.quoin.store.PlateReader;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;

/** What holds for every run, whatever the order and the jig. */
class RunLawsTest {
    private static final double FIELD = 200;
    private static final double REACH = 95;
    /** Coordinates in files have three decimals; ink may overstep a pocket by 0.01 mm. */
    private static final double TOLERANCE = 0.011;
    /** The built-in machine's set-up and first piece, s. */
    private static final double SETUP = 420 + 90;

    /** A row of the order; its quantity may be 0. */
    private record Wanted(String name, int quantity, String town, boolean steel) {}

    /** A slot: its place on a grid of 60 mm, its turn, whether it may be used. */
    private record Pocket(int place, int rotation, boolean usable) {
        double x() {
            return place % 3 * 60;
        }

        double y() {
            return place / 3 * 60;
        }

        String line() {
            return "S" + place + "," + x() + "," + y() + "," + rotation + ",50,25," + (usable ? "yes" : "no");
        }
    }

    @Property(tries = 20, shrinking = ShrinkingMode.OFF, seed = "2026")
    void everyRunKeepsTheLaws(@ForAll("orders") List<Wanted> rows, @ForAll("jigs") List<Pocket> jig) throws Exception {
        Path folder = Files.createTempDirectory("quoin-laws");
        try {
            JobFolder job = job(folder, rows, jig);
            QuoinRun run = job.prepare("--json");
            assertEquals(0, run.status(), run.err().toString());
            CsvText items = CsvText.read(job.run().resolve("items.csv"));
            CsvText plates = CsvText.read(job.run().resolve("plates.csv"));
            everyItemIsOnOneSlotOfOnePlate(rows, jig, items);
            platesDoNotMixGroups(items);
            sumsAddUp(items, plates, new ObjectMapper().readTree(String.join("", run.out())));
            for (Map<String, String> item : items.rows()) {
                inkStaysInItsPocketAndInReach(job.run(), item, jig);
            }
            aReprintEqualsItsGroups(job, items.rows().get(items.rows().size() / 2));
        } finally {
            JobFolder.delete(folder);
        }
    }

    private static JobFolder job(Path folder, List<Wanted> rows, List<Pocket> jig) {
        List<String> lines = new ArrayList<>(List.of("Name,Number,Town,Recipe,Blank"));
        for (Wanted row : rows) {
            lines.add(String.join(
                    ",",
                    row.name(),
                    Integer.toString(row.quantity()),
                    row.town(),
                    row.steel() ? "leather-fob" : "",
                    row.steel() ? "leather-fob-70x28" : ""));
        }
        return new JobFolder(folder)
                .order(lines.toArray(String[]::new))
                .template(JobFolder.text("${name}") + "<path class='outline' d='M1 1H9V4Z' fill='none' stroke='black'/>"
                        + "<path d='M49.99 24.99h-6v-2z'/>")
                .jig(jig.stream().map(Pocket::line).toArray(String[]::new))
                .set("quantity-column", "Number")
                .set("group-by", "Town")
                .set("recipe-column", "Recipe")
                .set("blank-column", "Blank");
    }

    private static void everyItemIsOnOneSlotOfOnePlate(List<Wanted> rows, List<Pocket> jig, CsvText items) {
        List<String> expected = new ArrayList<>();
        int number = 0;
        for (int row = 0; row < rows.size(); row++) {
            for (int copy = 1; copy <= rows.get(row).quantity(); copy++) {
                expected.add(++number + " of line " + (row + 2) + ", copy " + copy);
            }
        }
        assertEquals(
                expected,
                items.rows().stream()
                        .map(item -> item.get("item") + " of line " + item.get("row") + ", copy " + item.get("copy"))
                        .toList());
        Set<List<String>> seats = new HashSet<>();
        Set<String> usable = new HashSet<>();
        jig.stream().filter(Pocket::usable).forEach(pocket -> usable.add("S" + pocket.place()));
        for (Map<String, String> item : items.rows()) {
            assertTrue(seats.add(List.of(item.get("plate"), item.get("slot"))), () -> "two in a slot: " + item);
            assertTrue(usable.contains(item.get("slot")), () -> "not usable: " + item);
        }
    }

    private static void platesDoNotMixGroups(CsvText items) {
        Set<List<String>> groups = new HashSet<>();
        items.rows().forEach(item -> groups.add(List.of(item.get("plate"), item.get("Town"), item.get("recipe"))));
        assertEquals(Set.copyOf(items.column("plate")).size(), groups.size());
    }

    private static void sumsAddUp(CsvText items, CsvText plates, JsonNode summary) {
        int setups = 0;
        List<String> before = List.of();
        for (Map<String, String> plate : plates.rows()) {
            double marking = number(plate, "marking_s");
            assertEquals(marking + number(plate, "handling_s"), number(plate, "total_s"), 1.6e-4);
            List<Map<String, String>> own = items.rows().stream()
                    .filter(item -> item.get("plate").equals(plate.get("plate")))
                    .toList();
            assertEquals(own.size(), number(plate, "items"));
            assertEquals(
                    own.stream().mapToDouble(item -> number(item, "seconds")).sum(), marking, 1e-4 * (own.size() + 1));
            // 4.5 s for each item and 20 s for the plate: the built-in machine.
            assertEquals(4.5 * own.size() + 20, number(plate, "handling_s"), 1e-9);
            List<String> setUp = List.of(plate.get("jig"), plate.get("lens"), plate.get("recipe"), plate.get("blank"));
            setups += setUp.equals(before) ? 0 : 1;
            before = setUp;
        }
        double rounding = 1e-4 * (plates.rows().size() + 1);
        assertEquals(plates.sum("marking_s"), summary.get("markingSeconds").asDouble(), rounding);
        assertEquals(
                plates.sum("handling_s") + setups * SETUP,
                summary.get("handlingSeconds").asDouble(),
                rounding);
        assertEquals(
                plates.sum("total_s") + setups * SETUP,
                summary.get("totalSeconds").asDouble(),
                rounding);
        assertEquals(items.rows().size(), summary.get("items").asInt());
    }

    private static void inkStaysInItsPocketAndInReach(Path run, Map<String, String> item, List<Pocket> jig)
            throws Exception {
        int number = Integer.parseInt(item.get("item"));
        Pocket pocket = jig.stream()
                .filter(one -> ("S" + one.place()).equals(item.get("slot")))
                .findFirst()
                .orElseThrow();
        double[] middle = middle(jig);
        double angle = Math.toRadians(pocket.rotation());
        List<PlateMark> marks = marks(run, item.get("plate"), number);
        assertEquals(3, marks.size(), "the name, the outline and the corner");
        for (PlateMark mark : marks) {
            for (Polyline line : mark.path().flatten(0.001)) {
                for (int i = 0; i < line.size(); i++) {
                    double x = line.x(i) - FIELD / 2;
                    double y = FIELD / 2 - line.y(i);
                    assertTrue(Math.max(Math.abs(x), Math.abs(y)) <= REACH + 1e-3, () -> "out of reach: " + item);
                    double dx = x - (pocket.x() - middle[0]);
                    double dy = y - (pocket.y() - middle[1]);
                    double along = dx * Math.cos(angle) + dy * Math.sin(angle);
                    double across = -dx * Math.sin(angle) + dy * Math.cos(angle);
                    assertTrue(
                            Math.abs(along) <= 25 + TOLERANCE && Math.abs(across) <= 12.5 + TOLERANCE,
                            () -> "outside its pocket by its own place (" + along + ", " + across + "): " + item);
                }
            }
        }
    }

    private static List<PlateMark> marks(Path run, String plate, int item) throws Exception {
        String name = "plate-%03d.svg".formatted(Integer.parseInt(plate));
        try (InputStream file = Files.newInputStream(run.resolve(name))) {
            return PlateReader.read(file, Set.of(item)).get(item);
        }
    }

    /** The middle of the box around all pockets as they stand, worked out from their corners. */
    private static double[] middle(List<Pocket> jig) {
        double[] least = {Double.MAX_VALUE, Double.MAX_VALUE};
        double[] most = {-Double.MAX_VALUE, -Double.MAX_VALUE};
        for (Pocket pocket : jig) {
            double angle = Math.toRadians(pocket.rotation());
            for (int corner = 0; corner < 4; corner++) {
                double dx = corner % 2 == 0 ? -25 : 25;
                double dy = corner / 2 == 0 ? -12.5 : 12.5;
                double[] at = {
                    pocket.x() + dx * Math.cos(angle) - dy * Math.sin(angle),
                    pocket.y() + dx * Math.sin(angle) + dy * Math.cos(angle)
                };
                for (int axis = 0; axis < 2; axis++) {
                    least[axis] = Math.min(least[axis], at[axis]);
                    most[axis] = Math.max(most[axis], at[axis]);
                }
            }
        }
        return new double[] {(least[0] + most[0]) / 2, (least[1] + most[1]) / 2};
    }

    private static void aReprintEqualsItsGroups(JobFolder job, Map<String, String> item) throws Exception {
        QuoinRun reprint = job.quoin("reprint", "runs/job", "--item", item.get("item"));
        assertEquals(0, reprint.status(), reprint.err().toString());
        String plate =
                Files.readString(job.run().resolve("plate-%03d.svg".formatted(Integer.parseInt(item.get("plate")))));
        String again = Files.readString(job.run().resolve("reprints/reprint-001.svg"));
        for (int step = 1; step <= 3; step++) {
            String id = "step-%d-item-%04d".formatted(step, Integer.parseInt(item.get("item")));
            assertEquals(PlateText.group(plate, id), PlateText.group(again, id));
        }
    }

    private static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.get(column));
    }

    @Provide
    Arbitrary<List<Wanted>> orders() {
        Arbitrary<Wanted> row = Combinators.combine(
                        Arbitraries.of("Ada", "Grace Hopper", "\u0391\u03B3\u03BD\u03AE", "Jo'o", "W", "il"),
                        Arbitraries.integers().between(0, 4),
                        Arbitraries.of("Bath", "York"),
                        Arbitraries.of(true, false, false))
                .as(Wanted::new);
        return row.list().ofMinSize(1).ofMaxSize(6).filter(rows -> rows.stream().anyMatch(one -> one.quantity() > 0));
    }

    @Provide
    Arbitrary<List<Pocket>> jigs() {
        Arbitrary<Pocket> pocket = Combinators.combine(
                        Arbitraries.integers().between(0, 8),
                        Arbitraries.of(0, 30, 90, 135, 180, 270),
                        Arbitraries.of(true, true, true, false))
                .as(Pocket::new);
        return pocket.list()
                .uniqueElements(Pocket::place)
                .ofMinSize(1)
                .ofMaxSize(6)
                .filter(jig -> jig.stream().anyMatch(Pocket::usable));
    }
}
