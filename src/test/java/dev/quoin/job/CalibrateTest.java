package dev.quoin.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.shop.ShopFiles;
import dev.quoin.store.RunEvent;
import dev.quoin.store.RunLog;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Given runs that were prepared with the built-in machine and marked on another, whose times went into the record within 1 %,
 * then the machine table that is learnt foretells that machine's next plate within 3 %.
 */
class CalibrateTest {
    private static final int RUNS = 14;

    @TempDir
    Path folder;

    private Path truth;

    @BeforeEach
    void given() throws IOException {
        truth = shop("truth");
        String machine = Files.readString(truth.resolve("machine.csv"));
        Files.writeString(
                truth.resolve("machine.csv"),
                machine.replace("jump_settle_us,350", "jump_settle_us,610")
                        .replace("mark_settle_us,140", "mark_settle_us,330")
                        .replace("jump_speed_mm_s,5000", "jump_speed_mm_s,3100")
                        .replace("load_s,4.5", "load_s,7.2")
                        .replace("plate_s,20", "plate_s,33"));
    }

    private Path shop(String name) throws IOException {
        Path shop = Files.createDirectory(folder.resolve(name));
        for (Map.Entry<String, byte[]> file : ShopFiles.builtIn().files().entrySet()) {
            Files.write(shop.resolve(file.getKey()), file.getValue());
        }
        return shop;
    }

    /** Boxes and bars of random sizes, on one plate of one to six items. */
    private SmallJob job(int number) throws IOException {
        Random random = new Random(number);
        StringBuilder order = new StringBuilder("Name\n");
        for (int i = 0; i <= random.nextInt(6); i++) {
            order.append("n").append(i).append('\n');
        }
        Path own = Files.createDirectory(folder.resolve("job-" + number));
        SmallJob job = new SmallJob(own, order.toString());
        double side = 0.5 + 5 * random.nextDouble();
        StringBuilder template = new StringBuilder("<svg xmlns='http://www.w3.org/2000/svg' width='8mm' height='8mm'"
                + " viewBox='0 0 8 8'><rect class='engrave' x='1' y='1' width='" + side + "' height='" + side + "'/>");
        for (int i = 0; i < random.nextInt(12); i++) {
            template.append("<rect class='outline' x='" + 7 * random.nextDouble() + "' y='" + 0.6 * i
                    + "' width='0.4' height='0.4'/>");
        }
        return job.file("template.svg", template.append("</svg>").toString());
    }

    private double total(SmallJob job, Path shop) throws IOException {
        assertTrue(job.with(JobKey.SHOP, shop.toString()).prepare().isPresent());
        return job.table("plates.csv").stream()
                .mapToDouble(part -> Double.parseDouble(part.get("total_s")))
                .sum();
    }

    private List<Path> measuredRuns() throws IOException {
        Random noise = new Random(99);
        List<Path> runs = new ArrayList<>();
        for (int number = 1; number <= RUNS; number++) {
            runs.add(measured(job(number), noise));
        }
        return runs;
    }

    private Path measured(SmallJob job, Random noise) throws IOException {
        double seconds = total(job, truth) * (1 + 0.01 * noise.nextGaussian());
        assertTrue(job.without(JobKey.SHOP).prepare().isPresent());
        new RunLog(job.run()).add(List.of(done(1, 3 * seconds), done(1, seconds)));
        return job.run();
    }

    private static RunEvent done(int plate, double seconds) {
        Instant at = Instant.parse("2026-03-05T08:00:00Z");
        return new RunEvent(at, RunEvent.Kind.DONE, plate, 0, "", OptionalDouble.of(seconds), "", "");
    }

    @Test
    void theMachineTableThatIsLearntForetellsTheNextPlates() throws IOException {
        Path learnt = shop("learnt");
        Path table = folder.resolve("machine-new.csv");
        Outcome<Calibrate.Learnt> outcome = new Calibrate(measuredRuns(), table).run();
        assertEquals(List.of(), outcome.problems());
        Files.copy(table, learnt.resolve("machine.csv"), StandardCopyOption.REPLACE_EXISTING);
        for (int number = 101; number <= 105; number++) {
            SmallJob next = job(number);
            double real = total(next, truth);
            assertEquals(real, total(next, learnt), 0.03 * real);
        }
        assertTrue(outcome.result().orElseThrow().calibrated().before().typical() > 0.2);
    }

    /** One to six items on a jig that is shifted between its slots: one to three stations. */
    private SmallJob shifted(int number) throws IOException {
        return job(number)
                .with(JobKey.JIG_STEPS, "x=-70,0,70")
                .file("tray.csv", """
                slot,x_mm,y_mm,rotation_deg,width_mm,height_mm,usable
                A1,-80,0,0,10,10,true
                A2,0,0,0,10,10,true
                A3,80,0,0,10,10,true
                B1,-80,20,0,10,10,true
                B2,0,20,0,10,10,true
                B3,80,20,0,10,10,true
                """)
                .with(JobKey.LENS, "short-100");
    }

    /** The built-in machine does not have how long shifting takes: it is learnt, and has a row of its own. */
    @Test
    void platesOfSeveralPartsTellWhatShiftingTakes() throws IOException {
        Files.writeString(truth.resolve("machine.csv"), "shift_s,11,s,\n", StandardOpenOption.APPEND);
        Path learnt = shop("learnt");
        Path table = folder.resolve("machine-new.csv");
        Random noise = new Random(7);
        List<Path> runs = new ArrayList<>(measuredRuns());
        for (int number = 51; number <= 58; number++) {
            runs.add(measured(shifted(number), noise));
        }
        Outcome<Calibrate.Learnt> outcome = new Calibrate(runs, table).run();
        assertEquals(List.of(), outcome.problems());
        assertEquals(runs.size(), outcome.result().orElseThrow().plates());
        String shift = Files.readAllLines(table).stream()
                .filter(row -> row.startsWith("shift_s,"))
                .findFirst()
                .orElseThrow();
        assertEquals(11, Double.parseDouble(shift.split(",")[1]), 1);
        Files.copy(table, learnt.resolve("machine.csv"), StandardCopyOption.REPLACE_EXISTING);
        for (int number = 201; number <= 205; number++) {
            SmallJob next = shifted(number);
            double real = total(next, truth);
            assertEquals(real, total(next, learnt), 0.03 * real);
        }
    }

    @Test
    void rowsAndNotesStayAndOnlyDelaysChange() throws IOException {
        Path table = folder.resolve("machine-new.csv");
        new Calibrate(measuredRuns(), table).run();
        List<String> was = new String(ShopFiles.builtIn().files().get("machine.csv"), StandardCharsets.UTF_8)
                .lines()
                .toList();
        List<String> is = Files.readAllLines(table);
        assertEquals(was.size(), is.size());
        for (int i = 0; i < was.size(); i++) {
            boolean delay = was.get(i).matches("(jump|laser_o|mark_settle|corner|load|plate).*");
            assertEquals(name(was.get(i)), name(is.get(i)));
            assertTrue(delay || was.get(i).equals(is.get(i)), is.get(i));
        }
    }

    private static String name(String row) {
        return row.substring(0, row.indexOf(','));
    }

    @Test
    void withoutMeasuredTimesNothingIsWritten() throws IOException {
        SmallJob job = job(1);
        job.prepare();
        Path table = folder.resolve("machine-new.csv");
        Outcome<Calibrate.Learnt> outcome = new Calibrate(List.of(job.run()), table).run();
        assertTrue(outcome.result().isEmpty());
        assertTrue(outcome.problems().get(0).toString().contains("0 plates are measured, which is too few"));
        assertFalse(Files.exists(table));
    }

    @Test
    void aTableThatIsThereIsNeverWrittenOver() throws IOException {
        Path table = Files.writeString(folder.resolve("machine-new.csv"), "mine");
        assertThrows(FileAlreadyExistsException.class, () -> new Calibrate(List.of(folder), table).run());
        assertEquals("mine", Files.readString(table));
    }
}
