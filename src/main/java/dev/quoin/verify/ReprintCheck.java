package dev.quoin.verify;

import dev.quoin.geometry.Box;
import dev.quoin.plate.Placement;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Step;
import dev.quoin.store.ReprintFolder;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.xml.stream.XMLStreamException;

/** A reprint against the plates whose items it marks again: to the letter, or in another slot the same shapes. */
public final class ReprintCheck {
    /** Each of two files rounds to 0.0005 mm, and a turn spreads that over both coordinates. */
    private static final double ROUNDING = 0.0025;

    private static final String REMEDY = "do not mark it; make the reprint again";

    private final Path folder;
    private final Function<PlateClaim, Fixture> fixtures;
    private final Problems problems;
    private final Map<Integer, ItemClaim> items;
    private final Map<Integer, List<PlateClaim>> files;
    private final Map<Integer, Set<PartKey>> parts;

    /**
     * Sets up.
     *
     * @param folder the run's, whose listed files are proven unchanged
     */
    public ReprintCheck(Path folder, RunClaims claims, Function<PlateClaim, Fixture> fixtures, Problems problems) {
        this.folder = folder;
        this.fixtures = fixtures;
        this.problems = problems;
        this.items = claims.byNumber();
        this.files = claims.filesByPlate();
        this.parts = claims.items().stream()
                .collect(
                        Collectors.groupingBy(ItemClaim::item, Collectors.mapping(ItemClaim::key, Collectors.toSet())));
    }

    /** Checks one. */
    public void check(int reprint) throws IOException {
        Map<Integer, List<ReprintClaim>> byPart = ReprintClaim.read(folder, reprint).stream()
                .filter(this::isKnown)
                .collect(Collectors.groupingBy(ReprintClaim::part, TreeMap::new, Collectors.toList()));
        for (Map.Entry<Integer, List<ReprintClaim>> part : byPart.entrySet()) {
            check(ReprintFolder.plateFile(reprint, part.getKey(), "svg"), part.getValue());
        }
        checkSides(reprint, byPart.values());
    }

    private void check(String name, List<ReprintClaim> marked) throws IOException {
        byte[] again = Files.readAllBytes(folder.resolve(name));
        Fixture fixture = fixture(marked.get(0));
        Map<Integer, String> slots =
                marked.stream().collect(Collectors.toMap(ReprintClaim::item, ReprintClaim::slot, (a, b) -> a));
        InkCheck ink = new InkCheck(name, fixture, fixture.pockets(), slots, problems);
        if (!parse(name, again, ink)) {
            return;
        }
        if (!fixture.allows(marked.get(0).stand())) {
            problems.error(marked.get(0).place(), "the run's settings let no jig stand so", REMEDY);
        }
        Map<PartKey, List<ReprintClaim>> byOriginal = marked.stream()
                .collect(Collectors.groupingBy(
                        claim -> originals(claim).get(0).key(), TreeMap::new, Collectors.toList()));
        for (List<ReprintClaim> claims : byOriginal.values()) {
            for (PlateClaim file : originals(claims.get(0))) {
                compare(name, again, file, claims, fixture);
            }
        }
        checkAllMarked(name, marked, ink);
    }

    /** What an item's plate is held to while the jig stands as in the reprint. */
    private Fixture fixture(ReprintClaim claim) {
        return fixtures.apply(files.get(claim.plate()).get(0).standing(claim.stand()));
    }

    /** The files in which an item was marked first, on the side and with the turn of this claim. */
    private List<PlateClaim> originals(ReprintClaim claim) {
        return files.get(claim.plate()).stream()
                .filter(file -> file.stand().flip().equals(claim.stand().flip()))
                .filter(file -> file.stand().turn() == claim.stand().turn())
                .filter(file -> parts.get(claim.item()).contains(file.key()))
                .toList();
    }

    /** An item is marked again in as many parts as before. */
    private void checkSides(int reprint, Collection<List<ReprintClaim>> marked) {
        Map<Integer, Long> counts = marked.stream()
                .flatMap(List::stream)
                .collect(Collectors.groupingBy(ReprintClaim::item, TreeMap::new, Collectors.counting()));
        counts.forEach((item, count) -> {
            int before = parts.get(item).size();
            if (count != before) {
                problems.error(
                        Place.of(ReprintFolder.name(reprint, "csv")),
                        "item " + item + " is marked again in " + count + " of its " + before + " parts",
                        REMEDY);
            }
        });
    }

    private boolean isKnown(ReprintClaim claim) {
        ItemClaim item = items.get(claim.item());
        if (item == null || item.plate() != claim.plate() || !files.containsKey(claim.plate())) {
            problems.error(claim.place(), "plate " + claim.plate() + " of the run has no item " + claim.item(), REMEDY);
            return false;
        }
        if (originals(claim).isEmpty()) {
            problems.error(claim.place(), "item " + claim.item() + " has no part that is marked so", REMEDY);
            return false;
        }
        return true;
    }

    private void compare(String name, byte[] again, PlateClaim plateFile, List<ReprintClaim> marked, Fixture fixture)
            throws IOException {
        byte[] first = Files.readAllBytes(folder.resolve(plateFile.file()));
        GroupText textAgain = GroupText.of(again);
        GroupText textFirst = GroupText.of(first);
        Optional<ItemShapes> shapesAgain = shapes(name, again, marked, ReprintClaim::slot, fixture);
        Optional<ItemShapes> shapesFirst =
                shapes(name, first, marked, claim -> items.get(claim.item()).slot(), fixtures.apply(plateFile));
        for (ReprintClaim claim : marked) {
            boolean moved = !items.get(claim.item()).slot().equals(claim.slot())
                    || !plateFile.stand().isLike(claim.stand());
            for (Step step : claim.steps(fixture.recipe())) {
                Optional<String> original = textFirst.group(step.number(), claim.item());
                if (original.isEmpty()) {
                    continue;
                }
                boolean same = moved
                        ? shapesAgain.isPresent()
                                && shapesFirst.isPresent()
                                && alike(
                                        shapesAgain.get().boxes(step.number(), claim.item()),
                                        shapesFirst.get().boxes(step.number(), claim.item()))
                        : original.equals(textAgain.group(step.number(), claim.item()));
                if (!same) {
                    problems.error(
                            Place.of(name),
                            "item " + claim.item() + " is not marked as on plate " + claim.plate() + " in step "
                                    + step.number(),
                            REMEDY);
                }
            }
        }
    }

    private void checkAllMarked(String name, List<ReprintClaim> marked, InkCheck ink) {
        Map<Integer, Integer> expected = new HashMap<>();
        for (ReprintClaim claim : marked) {
            Fixture fixture = fixture(claim);
            expected.put(claim.item(), claim.steps(fixture.recipe()).size());
            for (Step step : claim.steps(fixture.recipe())) {
                if (!ink.seen().contains(InkCheck.group(step.number(), claim.item()))) {
                    problems.error(
                            Place.of(name), "item " + claim.item() + " is missing in step " + step.number(), REMEDY);
                }
            }
        }
        if (ink.seen().size()
                != expected.values().stream().mapToInt(Integer::intValue).sum()) {
            problems.error(Place.of(name), "it marks more steps than its table says", REMEDY);
        }
    }

    private Optional<ItemShapes> shapes(
            String name, byte[] file, List<ReprintClaim> marked, Function<ReprintClaim, String> slot, Fixture fixture) {
        Map<Integer, Placement> placements = new HashMap<>();
        for (ReprintClaim claim : marked) {
            Optional.ofNullable(fixture.placements().get(slot.apply(claim)))
                    .ifPresent(placement -> placements.put(claim.item(), placement));
        }
        ItemShapes shapes = new ItemShapes(placements);
        return parse(name, file, shapes) ? Optional.of(shapes) : Optional.empty();
    }

    private boolean parse(String name, byte[] file, PlateGroups groups) {
        try {
            PlateXml.read(new ByteArrayInputStream(file), groups);
            return true;
        } catch (XMLStreamException e) {
            problems.error(Place.of(name), "cannot be read as a plate", REMEDY);
            return false;
        }
    }

    private static boolean alike(List<Box> a, List<Box> b) {
        boolean same = a.size() == b.size();
        for (int i = 0; same && i < a.size(); i++) {
            same = a.get(i).contains(b.get(i), ROUNDING) && b.get(i).contains(a.get(i), ROUNDING);
        }
        return same;
    }
}
