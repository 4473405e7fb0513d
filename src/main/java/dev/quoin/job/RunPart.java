package dev.quoin.job;

import dev.quoin.plate.Stand;
import java.util.List;

/**
 * A part of a plate as the tables of a run have it.
 *
 * @param files in working order
 * @param marking the beam's work on all its files, s
 * @param handling s
 */
record RunPart(int number, Stand stand, List<String> files, double marking, double handling) {
    /** What its lines of {@code plates.csv} say. */
    static RunPart of(int number, Stand stand, List<List<String>> lines) {
        return new RunPart(
                number,
                stand,
                lines.stream().map(line -> PlatesCsv.cell(line, "file")).toList(),
                sum(lines, "marking_s"),
                sum(lines, "handling_s"));
    }

    private static double sum(List<List<String>> lines, String column) {
        return lines.stream()
                .mapToDouble(line -> Double.parseDouble(PlatesCsv.cell(line, column)))
                .sum();
    }
}
