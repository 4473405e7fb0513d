package dev.quoin.job;

import dev.quoin.plate.Stand;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A plate as the tables of a run have it.
 *
 * @param section of the run that has it, from 1
 * @param parts in working order
 * @param blank empty where none is named
 */
record RunPlate(int number, int section, List<RunPart> parts, String jig, String lens, String recipe, String blank) {
    /**
     * What its lines of {@code plates.csv} say.
     *
     * @param stands how the jig stands in each part, by its number; as it was loaded where none is given
     */
    static RunPlate of(List<List<String>> lines, int section, Map<Integer, Stand> stands) {
        SortedMap<Integer, List<List<String>>> byPart = new TreeMap<>();
        lines.forEach(
                line -> byPart.computeIfAbsent(Integer.valueOf(PlatesCsv.cell(line, "part")), part -> new ArrayList<>())
                        .add(line));
        List<RunPart> parts = new ArrayList<>();
        byPart.forEach((part, own) -> parts.add(RunPart.of(part, stands.getOrDefault(part, Stand.LOADED), own)));
        List<String> first = lines.get(0);
        return new RunPlate(
                Integer.parseInt(PlatesCsv.cell(first, "plate")),
                section,
                List.copyOf(parts),
                PlatesCsv.cell(first, "jig"),
                PlatesCsv.cell(first, "lens"),
                PlatesCsv.cell(first, "recipe"),
                PlatesCsv.cell(first, "blank"));
    }

    /** Marking and handling, s. */
    double seconds() {
        return parts.stream()
                .mapToDouble(part -> part.marking() + part.handling())
                .sum();
    }
}
