package dev.quoin.job;

import dev.quoin.plate.GroupSurvey;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Lens;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * What all rows together are: which groups there are, and which row belongs to which.
 *
 * @param groups by the first row of each
 * @param rowsOfGroup the indexes of each group's rows, in working order; rows with errors are in none
 * @param leftOut the indexes of rows with errors
 * @param sharing the sizes that texts share
 */
record Survey(
        List<GroupSurvey> groups,
        Map<GroupSurvey, List<Integer>> rowsOfGroup,
        List<Integer> leftOut,
        Sharing sharing,
        CodeChecks codes) {
    /** The same rows, with each group through another lens. */
    Survey through(UnaryOperator<GroupSurvey> lens) {
        List<GroupSurvey> changed = new ArrayList<>();
        Map<GroupSurvey, List<Integer>> rows = new LinkedHashMap<>();
        for (GroupSurvey group : groups) {
            GroupSurvey now = lens.apply(group);
            changed.add(now);
            rows.put(now, rowsOfGroup.getOrDefault(group, List.of()));
        }
        return new Survey(changed, rows, leftOut, sharing, codes);
    }

    /** Tells of codes too fine for the lens through which they are marked, in {@code chosen}, a survey of the same rows. */
    void tellFineCodes(Survey chosen, Problems problems) {
        Map<GroupSurvey, Lens> lenses = new LinkedHashMap<>();
        for (int i = 0; i < groups.size(); i++) {
            lenses.put(groups.get(i), chosen.groups().get(i).group().lens());
        }
        codes.tell(lenses, problems);
    }
}
