package dev.quoin.paper;

import java.util.List;
import java.util.Optional;

/**
 * A plate as the operator needs it.
 *
 * @param number from 1
 * @param files its files' names, one a part, in working order
 * @param changes what to change since the plate before; empty for the first plate
 * @param items how many
 * @param markingSeconds the beam's work, s
 * @param handlingSeconds loading and unloading, s
 * @param totalSeconds marking and handling, s
 * @param setupSeconds setting up before this plate, s, not part of the total; 0 where nothing changes
 * @param slots every slot of the jig, in the order of loading
 * @param code for a scanner: the run's name and the plate's
 * @param parts in working order; empty for a plate of one part that is marked as it was loaded
 */
public record PlateView(
        int number,
        List<String> files,
        GroupView group,
        List<Change> changes,
        int items,
        double markingSeconds,
        double handlingSeconds,
        double totalSeconds,
        double setupSeconds,
        List<StepView> steps,
        List<SlotView> slots,
        Optional<ScanCode> code,
        List<PartView> parts) {
    public PlateView {
        files = List.copyOf(files);
        changes = List.copyOf(changes);
        steps = List.copyOf(steps);
        slots = List.copyOf(slots);
        parts = List.copyOf(parts);
    }
}
