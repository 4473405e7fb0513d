package dev.quoin.job;

import dev.quoin.format.PlateSvg;
import dev.quoin.paper.ReprintSheet;
import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.Placement;
import dev.quoin.plate.PlateTime;
import dev.quoin.plate.PlateTimer;
import dev.quoin.plate.SlotCheck;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.problem.Suggestion;
import dev.quoin.shop.Machine;
import dev.quoin.store.ReprintFolder;
import dev.quoin.store.Run;
import dev.quoin.store.RunEvent;
import dev.quoin.store.RunLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;

/**
 * Marks failed items again: their marks are read from the plate files, so that they are the same to the last digit, and
 * written to a file of their own for each plate. What the manifest lists is not touched.
 */
public final class Reprint {
    private final Path folder;
    private final SortedSet<Integer> numbers;
    private final Optional<String> slot;
    private final String reason;
    private final Clock clock;

    /**
     * Sets up.
     *
     * @param folder the run's
     * @param numbers of the items
     * @param slot where to mark the one item instead of its own slot
     * @param reason for the log and the sheet; may be empty
     */
    public Reprint(Path folder, SortedSet<Integer> numbers, Optional<String> slot, String reason, Clock clock) {
        this.folder = folder;
        this.numbers = numbers;
        this.slot = slot;
        this.reason = reason;
        this.clock = clock;
    }

    /**
     * A reprint that was written.
     *
     * @param file its plate file, from the run folder
     * @param sheet its paper, from the run folder
     * @param seconds marking and handling, s
     */
    public record Written(String file, String sheet, int plate, List<Integer> items, double seconds) {}

    /**
     * Writes the reprints, one for each plate, and the log.
     *
     * @return nothing if an item or the slot is not in the run
     * @throws IOException if the run cannot be read, or is not as it was prepared, or the reprint cannot be written
     */
    public Outcome<List<Written>> run() throws IOException {
        Problems problems = new Problems();
        Run run = Run.open(folder);
        SortedMap<Integer, RunItem> items = RunItem.read(run.table("items.csv"), numbers);
        for (int number : numbers) {
            if (!items.containsKey(number)) {
                problems.error(
                        Place.of("items.csv"), "the run has no item " + number, "see the numbers on the run sheet");
            }
        }
        if (problems.hasErrors()) {
            return new Outcome<>(Optional.empty(), problems.sorted());
        }
        RunShop shop = RunShop.of(run);
        List<ReprintedPlate> plates = new ArrayList<>();
        for (List<RunItem> onPlate : byPlate(items)) {
            moved(ReprintedPlate.read(run, shop, onPlate), problems).ifPresent(plates::add);
        }
        if (problems.hasErrors()) {
            return new Outcome<>(Optional.empty(), problems.sorted());
        }
        List<Written> written = new ArrayList<>();
        new RunLog(run.folder()).addAfter(() -> write(run, shop, plates, written));
        return new Outcome<>(Optional.of(written), problems.sorted());
    }

    private static Collection<List<RunItem>> byPlate(SortedMap<Integer, RunItem> items) {
        SortedMap<Integer, List<RunItem>> plates = new TreeMap<>();
        items.values()
                .forEach(item -> plates.computeIfAbsent(item.plate(), plate -> new ArrayList<>())
                        .add(item));
        return plates.values();
    }

    /** The plate with its item in the slot that the user asks for. */
    private Optional<ReprintedPlate> moved(ReprintedPlate plate, Problems problems) {
        if (slot.isEmpty()) {
            return Optional.of(plate);
        }
        Placement target = plate.placements().get(slot.get());
        Place place = Place.of(plate.jig());
        if (target == null) {
            problems.error(
                    place,
                    "the jig has no slot '" + slot.get() + "'",
                    Suggestion.remedy(slot.get(), plate.placements().keySet()));
            return Optional.empty();
        }
        ReprintedPlate moved = plate.movedTo(target);
        if (!SlotCheck.holds(target, moved.items().get(0), plate.recipe(), plate.lens())) {
            problems.error(
                    place,
                    "the slot '" + slot.get() + "' cannot take the item: it is not usable, too small or out of reach",
                    "choose another slot");
            return Optional.empty();
        }
        return Optional.of(moved);
    }

    private List<RunEvent> write(Run run, RunShop shop, List<ReprintedPlate> plates, List<Written> written)
            throws IOException {
        List<RunEvent> events = new ArrayList<>();
        ReprintFolder reprints = new ReprintFolder(run.folder());
        ReprintViews views = new ReprintViews(run.name(), shop, reason);
        int number = reprints.next();
        for (ReprintedPlate plate : plates) {
            Written one = write(reprints, number++, shop.machine(), plate, views);
            written.add(one);
            plate.items().forEach(item -> events.add(event(plate, item, one)));
        }
        return events;
    }

    private RunEvent event(ReprintedPlate plate, LoadedItem item, Written written) {
        return new RunEvent(
                clock.instant().truncatedTo(ChronoUnit.SECONDS),
                RunEvent.Kind.REPRINTED,
                plate.number(),
                item.item(),
                item.placement().slot().id(),
                OptionalDouble.empty(),
                reason,
                written.file());
    }

    private static Written write(
            ReprintFolder reprints, int number, Machine machine, ReprintedPlate plate, ReprintViews views)
            throws IOException {
        PlateTime time = new PlateTimer(machine).time(plate.recipe(), plate.items());
        ByteArrayOutputStream svg = new ByteArrayOutputStream();
        new PlateSvg(plate.lens().field()).write(svg, plate.recipe().steps(), plate.items());
        reprints.write(number, "svg", svg.toByteArray());
        StringWriter sheet = new StringWriter();
        String file = ReprintFolder.name(number, "svg");
        new ReprintSheet().write(sheet, views.view(plate, number, file, time));
        reprints.write(number, "html", sheet.toString().getBytes(StandardCharsets.UTF_8));
        return new Written(
                file,
                ReprintFolder.name(number, "html"),
                plate.number(),
                plate.items().stream().map(LoadedItem::item).toList(),
                time.total());
    }
}
