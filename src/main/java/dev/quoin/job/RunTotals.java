package dev.quoin.job;

import dev.quoin.paper.PlateLine;
import dev.quoin.plate.Group;
import dev.quoin.plate.Plate;
import dev.quoin.plate.Spares;
import dev.quoin.plate.WorkedPlate;
import dev.quoin.shop.Blank;
import dev.quoin.shop.Machine;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Adds up a run, plate by plate (design, section 7). */
final class RunTotals {
    private final Machine machine;
    private final double spoilage;
    private final List<PlateLine> lines = new ArrayList<>();
    private final Map<Optional<Blank>, Integer> blanks = new LinkedHashMap<>();
    private Optional<Group> before = Optional.empty();
    private double marking;
    private double handling;
    private double setup;

    /**
     * Nothing added up yet.
     *
     * @param spoilage the share of the pieces that is expected to fail
     */
    RunTotals(Machine machine, double spoilage) {
        this.machine = machine;
        this.spoilage = spoilage;
    }

    void take(WorkedPlate worked, List<String> files) {
        Plate plate = worked.plate();
        SetUp setUp = SetUp.before(before, plate.group(), machine);
        setup += setUp.seconds();
        marking += worked.tally().seconds();
        handling += worked.handling();
        lines.add(
                new PlateLine(plate.number(), files, plate.seats().size(), setUp.changes(), worked.total(), seconds()));
        blanks.merge(plate.group().blank(), plate.seats().size(), Integer::sum);
        before = Optional.of(plate.group());
    }

    List<PlateLine> lines() {
        return lines;
    }

    /** How many of each blank; where a job names none, that too. */
    Map<Optional<Blank>, Integer> blanks() {
        return blanks;
    }

    /** How many spares are advised for so many of one blank. */
    int spares(int count) {
        return Spares.advised(count, spoilage);
    }

    /** The whole run so far, s. */
    double seconds() {
        return marking + handling + setup;
    }

    double setup() {
        return setup;
    }

    RunSummary summary(String name, Path out, List<String> sheets, int rowsLeftOut) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        Map<String, Integer> spares = new LinkedHashMap<>();
        blanks.forEach((blank, count) -> {
            String called = blank.map(Blank::name).orElse(RunSummary.UNNAMED);
            counts.put(called, count);
            spares.put(called, spares(count));
        });
        int items = blanks.values().stream().mapToInt(Integer::intValue).sum();
        return new RunSummary(
                name, out, sheets, lines.size(), items, counts, spares, rowsLeftOut, marking, handling + setup);
    }
}
