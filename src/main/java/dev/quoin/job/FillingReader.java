package dev.quoin.job;

import dev.quoin.plate.FillOrder;
import dev.quoin.plate.Filling;
import dev.quoin.problem.Problems;
import dev.quoin.problem.Suggestion;
import dev.quoin.shop.Jig;
import dev.quoin.shop.Slot;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Reads how the jigs of a job are to be filled. */
record FillingReader(JobSettings settings, Problems problems) {
    Filling read() {
        return new Filling(order(), Set.copyOf(settings.list(JobKey.SKIP_SLOTS)), settings.text(JobKey.FIRST_SLOT));
    }

    /**
     * A slot that is named and that no jig has is a problem.
     *
     * @param jigs in working order, at least one
     * @param startsTheRun whether the first of them holds the run's first plate
     */
    void lookUpSlots(List<Jig> jigs, boolean startsTheRun) {
        settings.list(JobKey.SKIP_SLOTS).forEach(slot -> lookUp(JobKey.SKIP_SLOTS, slot, jigs));
        if (startsTheRun) {
            settings.text(JobKey.FIRST_SLOT).ifPresent(slot -> lookUp(JobKey.FIRST_SLOT, slot, jigs.subList(0, 1)));
        }
    }

    private FillOrder order() {
        String word = settings.text(JobKey.FILL).orElse(FillOrder.FILE.word());
        List<String> words =
                Arrays.stream(FillOrder.values()).map(FillOrder::word).toList();
        if (!words.contains(word)) {
            problems.error(
                    settings.place(JobKey.FILL), "fill: unknown order '" + word + "'", Suggestion.remedy(word, words));
            return FillOrder.FILE;
        }
        return FillOrder.values()[words.indexOf(word)];
    }

    private void lookUp(JobKey key, String slot, List<Jig> jigs) {
        Set<String> known = new LinkedHashSet<>();
        jigs.forEach(jig -> jig.slots().stream().map(Slot::id).forEach(known::add));
        if (!known.contains(slot)) {
            String jig = jigs.stream().distinct().count() == 1
                    ? "the jig " + jigs.get(0).name() + " has no slot"
                    : "no jig of this job has a slot";
            problems.error(
                    settings.place(key), key.option() + ": " + jig + " '" + slot + "'", Suggestion.remedy(slot, known));
        }
    }
}
