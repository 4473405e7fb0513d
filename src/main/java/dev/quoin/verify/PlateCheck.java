package dev.quoin.verify;

import dev.quoin.plate.Placement;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Step;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import javax.xml.stream.XMLStreamException;

/** One part of a plate: its files as they are on the disk against what the tables claim of it. Several may be checked at once. */
public final class PlateCheck {
    /** The tables give three decimals, of mm and of degrees. */
    private static final double ROUNDING = 0.00051;

    private static final String REMEDY = "prepare the run again";

    private final Path folder;
    private final ListedFiles listed;
    private final List<PlateClaim> files;
    private final List<ItemClaim> items;
    private final Fixture fixture;
    private final Problems problems = new Problems();

    /**
     * Sets up.
     *
     * @param folder the run's
     * @param files of this part
     * @param items of this part
     */
    PlateCheck(Path folder, ListedFiles listed, List<PlateClaim> files, List<ItemClaim> items, Fixture fixture) {
        this.folder = folder;
        this.listed = listed;
        this.files = files;
        this.items = items;
        this.fixture = fixture;
    }

    /**
     * What was found.
     *
     * @param marks how many paths were held to their pockets
     */
    public record Result(Problems problems, long marks) {}

    /** Reads the plate's files, each once. */
    public Result check() throws IOException {
        items.forEach(this::checkPose);
        if (!fixture.allows(files.get(0).stand())) {
            problems.error(
                    files.get(0).place(), files.get(0).key() + ": the run's settings let no jig stand so", REMEDY);
        }
        Map<String, Pocket> pockets = fixture.pockets();
        Map<Integer, String> slots =
                items.stream().collect(Collectors.toMap(ItemClaim::item, ItemClaim::slot, (first, second) -> first));
        Set<String> seen = new HashSet<>();
        long marks = 0;
        boolean unchanged = true;
        for (PlateClaim file : files) {
            Problems found = new Problems();
            InkCheck ink = new InkCheck(file.file(), fixture, pockets, slots, found);
            unchanged &= read(file, ink, found);
            marks += ink.marks();
            seen.addAll(ink.seen());
        }
        if (unchanged) {
            checkAllThere(seen);
        }
        return new Result(problems, marks);
    }

    /** What a changed file holds is not told: it is not what was prepared. */
    private boolean read(PlateClaim file, InkCheck ink, Problems found) throws IOException {
        Path path = folder.resolve(file.file());
        if (!Files.isRegularFile(path)) {
            return false;
        }
        Place place = Place.of(file.file());
        try (HashedInput in = HashedInput.around(Files.newInputStream(path))) {
            try {
                PlateXml.read(unclosed(in), ink);
            } catch (XMLStreamException e) {
                found.error(place, "cannot be read as a plate: " + firstLine(e), REMEDY);
            }
            if (!listed.check(file.file(), in.finish(), problems)) {
                return false;
            }
        }
        if (ink.items() != file.items()) {
            found.error(place, "it holds " + ink.items() + " items, " + file.place() + " says " + file.items(), REMEDY);
        }
        problems.addAll(found);
        return true;
    }

    private static InputStream unclosed(InputStream in) {
        return new BufferedInputStream(in, 1 << 16) {
            @Override
            public void close() {
                // The rest of the file is still to be hashed.
            }
        };
    }

    private void checkPose(ItemClaim item) {
        Placement placement = fixture.placements().get(item.slot());
        if (placement == null) {
            problems.error(item.place(), "the jig has no slot " + item.slot(), REMEDY);
        } else if (!placement.slot().usable()) {
            problems.error(
                    item.place(),
                    "item " + item.item() + " lies in slot " + item.slot() + ", which is not usable",
                    REMEDY);
        } else if (Math.abs(placement.centre().x() - item.centre().x()) > ROUNDING
                || Math.abs(placement.centre().y() - item.centre().y()) > ROUNDING
                || Math.abs(Math.IEEEremainder(placement.rotation() - item.rotation(), 360)) > ROUNDING) {
            problems.error(
                    item.place(),
                    "item " + item.item() + " does not lie where the jig has slot " + item.slot(),
                    REMEDY);
        }
    }

    private void checkAllThere(Set<String> seen) {
        for (ItemClaim item : items) {
            for (Step step : fixture.recipe().steps()) {
                if (!seen.contains(InkCheck.group(step.number(), item.item()))) {
                    problems.error(
                            Place.of(files.get(0).file()),
                            "item " + item.item() + " is missing in step " + step.number() + " (" + step.process()
                                    + ")",
                            REMEDY);
                }
            }
        }
    }

    private static String firstLine(XMLStreamException e) {
        return String.valueOf(e.getMessage()).lines().findFirst().orElse("it is no XML");
    }
}
