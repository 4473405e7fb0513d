package dev.quoin.job;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a job comes to on each jig and through each lens.
 *
 * @param items on the plates
 * @param blanks how many of each are needed, by name; {@link RunSummary#UNNAMED} where the job names none
 * @param lines jig by jig, the smallest field first
 * @param unfit other jigs that cannot take the items, and why
 */
public record Quotation(
        String job, int items, Map<String, Integer> blanks, List<QuoteLine> lines, Map<String, String> unfit) {
    public Quotation {
        lines = List.copyOf(lines);
    }

    /**
     * The line to take: on each jig the smallest field that reaches every slot, or else the one of the fewest hours; of
     * these the one of the fewest hours. Empty if the job cannot be done on any.
     */
    public Optional<QuoteLine> choice() {
        Map<String, QuoteLine> best = new LinkedHashMap<>();
        lines.stream()
                .filter(line -> line.refusal().isEmpty())
                .forEach(line -> best.merge(line.jig(), line, Quotation::better));
        return best.values().stream().min(Comparator.comparingDouble(QuoteLine::total));
    }

    /** Why that line. */
    public String reason() {
        if (choice().isEmpty()) {
            return "no lens reaches a slot for every item";
        }
        String why = choice().get().reachesAll()
                ? "the smallest field, so the finest spot, that reaches every slot"
                : "no lens reaches every slot; this one takes the fewest hours";
        return lines.stream().map(QuoteLine::jig).distinct().count() == 1
                ? why
                : why + "; the fewest hours of all jigs";
    }

    private static QuoteLine better(QuoteLine finer, QuoteLine wider) {
        if (finer.reachesAll()) {
            return finer;
        }
        return wider.reachesAll() || wider.total() < finer.total() ? wider : finer;
    }
}
