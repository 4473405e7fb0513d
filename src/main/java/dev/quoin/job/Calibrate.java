package dev.quoin.job;

import dev.quoin.plate.PlateTimer;
import dev.quoin.plate.Stand;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Machine;
import dev.quoin.shop.ShopFiles;
import dev.quoin.store.NewTable;
import dev.quoin.store.Run;
import dev.quoin.store.RunEvent;
import dev.quoin.store.RunLog;
import dev.quoin.toolpath.Calibrated;
import dev.quoin.toolpath.Calibration;
import dev.quoin.toolpath.MeasuredPlate;
import dev.quoin.toolpath.Tally;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Learns a machine's delays from the plates that were timed by the clock, and writes a machine table with them. What a plate
 * holds is read back from its files and traced again, since the tables do not count jumps and corners.
 */
public final class Calibrate {
    private static final String MACHINE = "shop/" + ShopFiles.MACHINE;

    private final List<Path> folders;
    private final Path out;
    private final Problems problems = new Problems();
    private final List<MeasuredPlate> plates = new ArrayList<>();

    /**
     * Sets up.
     *
     * @param folders the runs'; the machine of the last is the one to correct
     * @param out the table to write
     */
    public Calibrate(List<Path> folders, Path out) {
        this.folders = folders.stream().distinct().toList();
        this.out = out;
    }

    /**
     * What was learnt.
     *
     * @param plates how many were timed
     * @param was the machine as the runs had it
     */
    public record Learnt(int plates, Machine was, Calibrated calibrated) {}

    /**
     * Fits, and writes the table.
     *
     * @return nothing, and nothing written, where the measured times do not do
     * @throws IOException if a run cannot be read, or the table is there already or cannot be written
     */
    public Outcome<Learnt> run() throws IOException {
        NewTable.checkFree(out);
        for (Path folder : folders) {
            take(Run.open(folder));
        }
        Run last = Run.open(folders.get(folders.size() - 1));
        int section = last.sections();
        Machine machine = RunShop.of(last, section).machine();
        Optional<Calibrated> fit = new Calibration(machine, plates, problems).fit();
        if (fit.isPresent()) {
            byte[] table = last.bytes(Run.numbered(InputsWriter.FOLDER, section) + MACHINE);
            String text = MachineCsv.with(table, fit.get(), machine);
            NewTable.write(out, text.getBytes(StandardCharsets.UTF_8));
        }
        return new Outcome<>(fit.map(one -> new Learnt(plates.size(), machine, one)), problems.sorted());
    }

    private void take(Run run) throws IOException {
        RunBook book = RunBook.of(run);
        PlateShelf shelf = new PlateShelf(run, book);
        for (Map.Entry<Integer, Double> plate : measured(run).entrySet()) {
            if (!book.plates().containsKey(plate.getKey())) {
                problems.warning(
                        Place.of(RunLog.FILE),
                        "run " + run.name() + " has no plate " + plate.getKey(),
                        "its time is not used");
                continue;
            }
            if (book.plates().get(plate.getKey()).recipe().equals(Swatches.RECIPE)) {
                problems.warning(
                        Place.of(run.name()),
                        "a settings trial loads one piece for all its items",
                        "its time is not used");
                continue;
            }
            ReprintedPlate marks = shelf.take(book.itemsOf(plate.getKey()));
            plates.add(measured("plate " + plate.getKey() + " of " + run.name(), marks, plate.getValue()));
        }
    }

    private static MeasuredPlate measured(String name, ReprintedPlate marks, double seconds) throws IOException {
        Machine machine = marks.shop().machine();
        PlateTimer timer = new PlateTimer(machine, marks.shop().hatched());
        Tally tally = Tally.ZERO;
        int turnedOver = 0;
        int shifts = 0;
        Stand before = marks.parts().get(0).stand();
        for (ReprintedPart part : marks.parts()) {
            tally = tally.plus(timer.time(marks.recipe(), part.items(), 0).tally());
            turnedOver += part.stand().isTurnedOverFrom(before) ? 1 : 0;
            shifts += part.stand().isShiftedFrom(before) ? 1 : 0;
            before = part.stand();
        }
        return MeasuredPlate.of(name, tally, machine, marks.items().size(), 1 + turnedOver, shifts, seconds);
    }

    /** The last time that was recorded for each plate, s. */
    private static SortedMap<Integer, Double> measured(Run run) throws IOException {
        SortedMap<Integer, Double> seconds = new TreeMap<>();
        for (RunEvent event : new RunLog(run.folder()).read().events()) {
            if (event.kind() == RunEvent.Kind.DONE && event.plate() > 0) {
                event.seconds().ifPresent(time -> seconds.put(event.plate(), time));
            }
        }
        return seconds;
    }
}
