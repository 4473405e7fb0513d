package dev.quoin.cli;

import dev.quoin.geometry.Decimals;
import dev.quoin.job.Quotation;
import dev.quoin.job.QuoteLine;
import dev.quoin.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** A quotation as a table for a person, and as JSON for a script. */
final class QuoteText {
    private static final List<String> HEADER =
            List.of("jig", "lens", "field", "slots", "plates", "laser", "total", "spot", "fluence");
    private static final int UM_PER_MM = 1_000;

    private QuoteText() {}

    static List<String> lines(Quotation quotation) {
        List<List<String>> table = new ArrayList<>();
        table.add(HEADER);
        quotation.lines().forEach(line -> table.add(cells(line)));
        List<String> lines = new ArrayList<>();
        lines.add(quotation.job() + ": " + quotation.items() + (quotation.items() == 1 ? " item; " : " items; ")
                + quotation.blanks().entrySet().stream()
                        .map(entry -> SummaryText.blanks(
                                entry.getValue(), entry.getValue() == 1 ? " blank" : " blanks", entry.getKey()))
                        .collect(Collectors.joining(", ")));
        lines.add("");
        lines.addAll(aligned(table));
        lines.add("");
        quotation
                .lines()
                .forEach(line -> line.refusal()
                        .ifPresent(why -> lines.add("not " + line.lens() + " on " + line.jig() + ": " + why)));
        quotation.unfit().forEach((jig, why) -> lines.add("not on " + jig + ": " + why));
        lines.add(quotation
                .choice()
                .map(line -> "take " + line.lens() + " on " + line.jig() + ": " + quotation.reason())
                .orElse("none can be taken: " + quotation.reason()));
        lines.add(
                "fluence is against that through the recipe's own lens, at the same power; it falls with the spot's area");
        return lines;
    }

    private static List<String> cells(QuoteLine line) {
        boolean done = line.refusal().isEmpty();
        return List.of(
                line.jig(),
                line.lens(),
                Decimals.mm(line.field()) + " mm",
                line.reached() + " of " + line.usable(),
                done ? Integer.toString(line.plates()) : "-",
                done ? SummaryText.duration(line.marking()) : "-",
                done ? SummaryText.duration(line.total()) : "-",
                Math.round(line.spot() * UM_PER_MM) + " um",
                fluence(line.fluence()));
    }

    /** One ratio if all recipes share it, else each by its recipe. */
    private static String fluence(Map<String, Double> ratios) {
        List<String> shares =
                ratios.values().stream().map(QuoteText::percent).distinct().toList();
        if (shares.size() < 2) {
            return shares.isEmpty() ? "-" : shares.get(0);
        }
        return ratios.entrySet().stream()
                .map(entry -> entry.getKey() + " " + percent(entry.getValue()))
                .collect(Collectors.joining(", "));
    }

    private static String percent(double ratio) {
        return Math.round(ratio * 100) + " %";
    }

    private static List<String> aligned(List<List<String>> table) {
        List<String> lines = new ArrayList<>();
        for (List<String> row : table) {
            StringBuilder line = new StringBuilder();
            for (int column = 0; column < row.size(); column++) {
                int at = column;
                int width = table.stream()
                        .mapToInt(other -> other.get(at).length())
                        .max()
                        .orElse(0);
                line.append(String.format(Locale.ROOT, "%-" + width + "s  ", row.get(column)));
            }
            lines.add(line.toString().stripTrailing());
        }
        return lines;
    }

    static String json(Quotation quotation, List<Problem> problems) {
        return "{\"job\":" + SummaryText.quote(quotation.job())
                + ",\"items\":" + quotation.items()
                + ",\"blanks\":" + SummaryText.blanks(quotation.blanks())
                + ",\"lines\":"
                + quotation.lines().stream().map(QuoteText::json).collect(Collectors.joining(",", "[", "]"))
                + quotation.unfit().entrySet().stream()
                        .map(entry -> SummaryText.quote(entry.getKey()) + ":" + SummaryText.quote(entry.getValue()))
                        .collect(Collectors.joining(",", ",\"unfit\":{", "}"))
                + ",\"take\":"
                + quotation
                        .choice()
                        .map(line -> "{\"jig\":" + SummaryText.quote(line.jig()) + ",\"lens\":"
                                + SummaryText.quote(line.lens()) + "}")
                        .orElse("null")
                + ",\"why\":" + SummaryText.quote(quotation.reason())
                + ",\"problems\":" + SummaryText.list(problems) + "}";
    }

    private static String json(QuoteLine line) {
        String fluence = line.fluence().entrySet().stream()
                .map(entry -> SummaryText.quote(entry.getKey()) + ":" + Decimals.seconds(entry.getValue()))
                .collect(Collectors.joining(",", "{", "}"));
        return "{\"jig\":" + SummaryText.quote(line.jig())
                + ",\"lens\":" + SummaryText.quote(line.lens())
                + ",\"fieldMm\":" + Decimals.mm(line.field())
                + ",\"slotsReached\":" + line.reached()
                + ",\"slotsUsable\":" + line.usable()
                + ",\"plates\":" + line.plates()
                + ",\"markingSeconds\":" + Decimals.seconds(line.marking())
                + ",\"handlingSeconds\":" + Decimals.seconds(line.handling())
                + ",\"totalSeconds\":" + Decimals.seconds(line.total())
                + ",\"spotMm\":" + Decimals.seconds(line.spot())
                + ",\"fluence\":" + fluence
                + ",\"refusal\":" + line.refusal().map(SummaryText::quote).orElse("null") + "}";
    }
}
