package dev.quoin.plate;

import dev.quoin.shop.Lens;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * The lens that a group is best worked with: of those that reach every slot that is needed, the one of the smallest
 * field, and of two such fields the one with the finer spot. Where none reaches all, the one that reaches most.
 *
 * @param survey the group through the lens that is chosen
 * @param reached how many of the needed slots it reaches
 * @param needed slots that can hold all items and are not to be left empty
 */
public record LensChoice(GroupSurvey survey, int reached, int needed) {
    private static final Comparator<Lens> FINEST_FIRST =
            Comparator.comparingDouble(Lens::field).thenComparing(Lens::focalLength);

    /** The lenses, the smallest field first. */
    public static List<Lens> finestFirst(Collection<Lens> lenses) {
        return lenses.stream().sorted(FINEST_FIRST).toList();
    }

    /** The choice for a surveyed group, out of at least one lens. */
    public static LensChoice of(GroupSurvey survey, Collection<Lens> lenses, Filling filling) {
        return finestFirst(lenses).stream()
                .map(lens -> through(survey.through(lens), filling))
                .reduce((finer, wider) -> wider.reached > finer.reached ? wider : finer)
                .orElseThrow();
    }

    private static LensChoice through(GroupSurvey survey, Filling filling) {
        Map<Placement, SlotState> states = filling.states(survey.slots());
        int reached = count(states, SlotState.OPEN);
        return new LensChoice(survey, reached, reached + count(states, SlotState.OUT_OF_REACH));
    }

    private static int count(Map<Placement, SlotState> states, SlotState wanted) {
        return (int) states.values().stream().filter(state -> state == wanted).count();
    }
}
