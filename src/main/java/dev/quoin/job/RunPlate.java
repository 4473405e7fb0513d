package dev.quoin.job;

import java.util.List;

/**
 * A plate as {@code plates.csv} of a run has it.
 *
 * @param section of the run that has it, from 1
 * @param files in working order
 * @param blank empty where none is named
 * @param marking the beam's work on all its files, s
 * @param handling s
 */
record RunPlate(
        int number,
        int section,
        List<String> files,
        String jig,
        String lens,
        String recipe,
        String blank,
        int items,
        double marking,
        double handling) {
    /** What its lines say. */
    static RunPlate of(List<List<String>> lines, int section) {
        List<String> first = lines.get(0);
        return new RunPlate(
                Integer.parseInt(PlatesCsv.cell(first, "plate")),
                section,
                lines.stream().map(line -> PlatesCsv.cell(line, "file")).toList(),
                PlatesCsv.cell(first, "jig"),
                PlatesCsv.cell(first, "lens"),
                PlatesCsv.cell(first, "recipe"),
                PlatesCsv.cell(first, "blank"),
                Integer.parseInt(PlatesCsv.cell(first, "items")),
                sum(lines, "marking_s"),
                sum(lines, "handling_s"));
    }

    /** Marking and handling, s. */
    double seconds() {
        return marking + handling;
    }

    private static double sum(List<List<String>> lines, String column) {
        return lines.stream()
                .mapToDouble(line -> Double.parseDouble(PlatesCsv.cell(line, column)))
                .sum();
    }
}
