package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.cli.Program.Ended;
import dev.quoin.shop.ShopFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Settings tried and adopted, and a machine learnt from the clock, from one end to the other. */
class SettingsCommandsTest {
    private static final double LOAD_LONGER = 1.5;
    private static final double PLATE_LONGER = 20;

    @TempDir
    private Path folder;

    private Program quoin;

    @BeforeEach
    void given() {
        quoin = new Program(folder);
    }

    @Test
    void aSwatchIsTriedAdoptedAndUsed() throws IOException {
        Path shop = Files.createDirectory(folder.resolve("shop"));
        for (Map.Entry<String, byte[]> file : ShopFiles.builtIn().files().entrySet()) {
            Files.write(shop.resolve(file.getKey()), file.getValue());
        }
        Files.writeString(folder.resolve("scrap.csv"), "slot,x_mm,y_mm,width_mm,height_mm\nS,0,0,90,60\n");
        String[] grid = {
            "grid",
            "--recipe",
            "steel-tag",
            "--vary",
            "speed=500:2000:4",
            "--vary",
            "frequency=30:60:3",
            "--jig",
            "scrap.csv",
            "--lens",
            "short-100",
            "--shop",
            "shop",
            "--out",
            "runs/trial"
        };
        Ended tried = quoin.run(grid);
        assertEquals(0, tried.status(), tried.err());
        assertTrue(tried.out().contains("swatches    12\n"), tried.out());
        assertTrue(tried.out().contains("blanks      1 (not named)\n"), tried.out());
        assertTrue(tried.err().contains("has 13 steps, and plate files have 8 colours"), tried.err());

        Ended adopted =
                quoin.run("grid", "--adopt", "runs/trial", "--swatch", "C2", "--as", "steel-proven", "--shop", "shop");
        assertEquals(0, adopted.status(), adopted.err());
        String recipes = Files.readString(shop.resolve("recipes.csv"));
        assertTrue(recipes.contains("\nsteel-proven,1,engrave,fill,"), recipes);

        SmallJob.in(folder);
        Ended used = quoin.run("prepare", "tags", "--shop", "shop", "--recipe", "steel-proven", "--out", "runs/tags");
        assertEquals(0, used.status(), used.err());
    }

    @Test
    void aFileForEachSwatchNeedsNoColours() throws IOException {
        Files.writeString(folder.resolve("scrap.csv"), "slot,x_mm,y_mm,width_mm,height_mm\nS,0,0,90,60\n");
        Ended split = quoin.run(
                "grid",
                "--recipe",
                "steel-tag",
                "--vary",
                "speed=500:1000:10",
                "--jig",
                "scrap.csv",
                "--lens",
                "short-100",
                "--out",
                "trial",
                "--split-steps");
        assertEquals(0, split.status(), split.err());
        assertTrue(!split.err().contains("colours"), split.err());
        assertTrue(Files.exists(folder.resolve("trial/plate-001-step-11-swatch_J1.svg")));
    }

    @Test
    void theClockTeachesTheMachine() throws IOException {
        Path order = Path.of("sample-orders/orchard-fair").toAbsolutePath();
        Ended prepared = quoin.run("prepare", order.toString(), "--skip-bad-rows", "--out", "run");
        assertEquals(0, prepared.status(), prepared.err());
        List<String> plates = Files.readAllLines(folder.resolve("run/plates.csv"));
        List<String> header = List.of(plates.get(0).split(","));
        for (String plate : plates.subList(1, plates.size())) {
            String[] cells = plate.split(",");
            double items = Double.parseDouble(cells[header.indexOf("items")]);
            double total = Double.parseDouble(cells[header.indexOf("total_s")]);
            long took = Math.round(total + LOAD_LONGER * items + PLATE_LONGER);
            String clock = String.format(Locale.ROOT, "%d:%02d", took / 60, took % 60);
            Ended done = quoin.run("done", "run", "--plate", cells[0], "--took", clock);
            assertEquals(0, done.status(), done.err());
        }
        Ended learnt = quoin.run("calibrate", "run", "--out", "machine-new.csv");
        assertEquals(0, learnt.status(), learnt.err());
        Path table = folder.resolve("machine-new.csv");
        Path old = folder.resolve("run/inputs/shop/machine.csv");
        assertEquals(value(old, "load_s") + LOAD_LONGER, value(table, "load_s"), 0.3, learnt.out());
        assertEquals(value(old, "plate_s") + PLATE_LONGER, value(table, "plate_s"), 6, learnt.out());
        Ended again = quoin.run("calibrate", "run", "--out", "machine-new.csv");
        assertEquals(3, again.status(), again.err());
    }

    private static double value(Path table, String setting) throws IOException {
        return Files.readAllLines(table).stream()
                .filter(line -> line.startsWith(setting + ","))
                .mapToDouble(line -> Double.parseDouble(line.split(",")[1]))
                .findFirst()
                .orElseThrow();
    }
}
