package dev.quoin.job;

import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import dev.quoin.table.Table;
import dev.quoin.table.TableReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** A job of small squares on a tray of 2 x 3 slots (A1 A2 A3 above B1 B2 B3), in a folder of its own. */
final class SmallJob {
    private static final String TEMPLATE = """
            <svg xmlns="http://www.w3.org/2000/svg" width="8mm" height="8mm" viewBox="0 0 8 8">
              <rect class="engrave" x="3" y="3" width="2" height="2"/>
            </svg>
            """;
    private static final String TRAY = """
            slot,x_mm,y_mm,rotation_deg,width_mm,height_mm,usable
            A1,10,30,0,10,10,true
            A2,30,30,0,10,10,true
            A3,50,30,0,10,10,true
            B1,10,10,0,10,10,true
            B2,30,10,0,10,10,true
            B3,50,10,0,10,10,true
            """;

    private final Path folder;
    private final Map<JobKey, String> settings = new EnumMap<>(JobKey.class);
    private List<Problem> problems = List.of();

    SmallJob(Path folder, String order) throws IOException {
        this.folder = folder;
        file("order.csv", order);
        file("template.svg", TEMPLATE);
        file("tray.csv", TRAY);
        with(JobKey.TEMPLATE, folder.resolve("template.svg").toString());
        with(JobKey.JIG, folder.resolve("tray.csv").toString());
        with(JobKey.RECIPE, "steel-tag").with(JobKey.LENS, "long-200");
        with(JobKey.OUT, folder.resolve("run").toString());
    }

    SmallJob with(JobKey key, String value) {
        settings.put(key, value);
        return this;
    }

    SmallJob without(JobKey key) {
        settings.remove(key);
        return this;
    }

    SmallJob file(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
        return this;
    }

    Path run() {
        return folder.resolve("run");
    }

    JobSettings settings(Problems found) throws IOException {
        return new JobSettingsReader(folder).read(folder.toString(), settings, found);
    }

    /** Prepares it, in place of what was prepared before. */
    Optional<RunSummary> prepare() throws IOException {
        settings.put(JobKey.REPLACE, "true");
        Problems found = new Problems();
        Outcome<RunSummary> outcome = new Prepare(settings(found), Progress.SILENT).run(found);
        problems = outcome.problems();
        return outcome.result();
    }

    /** The problems of the last preparation, a line each. */
    String problems() {
        return problems.stream().map(Problem::toString).collect(Collectors.joining("\n"));
    }

    /** What lies where, a line a plate: {@code A1=1 A2=2 B1=3}, slots in the order of the items' numbers. */
    List<String> plates() throws IOException {
        Map<String, String> plates = new LinkedHashMap<>();
        for (Map<String, String> item : table("items.csv")) {
            plates.merge(item.get("plate"), item.get("slot") + "=" + item.get("item"), (a, b) -> a + " " + b);
        }
        return plates.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(Map.Entry::getValue)
                .toList();
    }

    List<Map<String, String>> table(String name) throws IOException {
        byte[] bytes = Files.readString(run().resolve(name)).getBytes(StandardCharsets.UTF_8);
        Table table =
                TableReader.read(name, bytes, Optional.of(','), new Problems()).orElseThrow();
        return table.rows().stream()
                .map(row -> {
                    Map<String, String> cells = new LinkedHashMap<>();
                    for (int i = 0; i < table.headers().size(); i++) {
                        cells.put(table.headers().get(i), row.cells().get(i));
                    }
                    return cells;
                })
                .toList();
    }
}
