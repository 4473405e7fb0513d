package dev.quoin.verify;

import dev.quoin.art.MarkedCode;
import dev.quoin.geometry.Box;
import dev.quoin.plate.Placement;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.stream.XMLStreamException;

/** The codes on the plates: read back by a decoder from the marks in the plate files, they say what the rows say. */
public final class CodeCheck {
    private final Path folder;
    private final RunClaims claims;
    private final Function<PlateClaim, Fixture> fixtures;
    private final Problems problems;
    private int read;

    /**
     * Sets up.
     *
     * @param folder the run's, whose listed files are proven unchanged
     */
    public CodeCheck(Path folder, RunClaims claims, Function<PlateClaim, Fixture> fixtures, Problems problems) {
        this.folder = folder;
        this.claims = claims;
        this.fixtures = fixtures;
        this.problems = problems;
    }

    /**
     * Checks the codes of all items.
     *
     * @param expected what the codes on each item that has any say, by its number
     * @return how many codes were read
     */
    public int check(Map<Integer, List<MarkedCode>> expected) throws IOException {
        Map<Integer, List<ItemClaim>> items =
                claims.byNumber().values().stream().collect(Collectors.groupingBy(ItemClaim::plate));
        for (Map.Entry<Integer, List<PlateClaim>> plate : claims.filesByPlate().entrySet()) {
            List<ItemClaim> coded = items.getOrDefault(plate.getKey(), List.of()).stream()
                    .filter(item -> expected.containsKey(item.item()))
                    .toList();
            if (!coded.isEmpty()) {
                check(plate.getValue(), coded, expected);
            }
        }
        return read;
    }

    private void check(List<PlateClaim> files, List<ItemClaim> items, Map<Integer, List<MarkedCode>> expected)
            throws IOException {
        List<ItemShapes> shapes = new ArrayList<>();
        for (PlateClaim file : files) {
            Fixture fixture = fixtures.apply(file);
            Map<Integer, Placement> placements = new HashMap<>();
            items.forEach(
                    item -> placements.put(item.item(), fixture.placements().get(item.slot())));
            ItemShapes found = new ItemShapes(placements);
            try (InputStream in = new BufferedInputStream(Files.newInputStream(folder.resolve(file.file())))) {
                PlateXml.read(in, found);
            } catch (XMLStreamException e) {
                throw new IOException(file.file() + " cannot be read", e);
            }
            shapes.add(found);
        }
        for (ItemClaim item : items) {
            for (MarkedCode code : expected.get(item.item())) {
                // The mark that lies where the code should comes first, since a picture of each takes long.
                Stream<dev.quoin.geometry.Path> marks = shapes.stream()
                        .flatMap(one -> one.paths(item.item()).stream())
                        .sorted(Comparator.comparingDouble(mark -> differ(mark.bounds(), code.bounds())));
                if (marks.anyMatch(mark -> says(mark, code))) {
                    read++;
                } else {
                    problems.error(
                            Place.of(files.get(0).file()),
                            "no " + code.kind().word() + " code on item " + item.item() + " reads '" + code.encoded()
                                    + "'",
                            "do not mark this plate; prepare the run again");
                }
            }
        }
    }

    /** How far the sides of two boxes lie from each other in all, mm. */
    private static double differ(Box one, Box other) {
        return Math.abs(one.minX() - other.minX())
                + Math.abs(one.minY() - other.minY())
                + Math.abs(one.maxX() - other.maxX())
                + Math.abs(one.maxY() - other.maxY());
    }

    private static boolean says(dev.quoin.geometry.Path mark, MarkedCode code) {
        return new CodePicture(mark, code.module())
                .read(code.kind())
                .filter(code.encoded()::equals)
                .isPresent();
    }
}
