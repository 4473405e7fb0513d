package dev.quoin.job;

import dev.quoin.optics.RecipeCheck;
import dev.quoin.order.Item;
import dev.quoin.plate.Group;
import dev.quoin.plate.GroupSurvey;
import dev.quoin.plate.Placement;
import dev.quoin.plate.Planner;
import dev.quoin.plate.SlotState;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.problem.Severity;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** From a loaded job to its plates: all that preparing and checking have in common. */
final class Planning {
    private final LoadedJob job;
    private final Problems problems;
    private final Progress progress;

    Planning(LoadedJob job, Problems problems, Progress progress) {
        this.job = job;
        this.problems = problems;
        this.progress = progress;
    }

    /** The plan, or nothing where errors stand in its way. */
    Optional<Plan> plan() throws IOException {
        boolean skipBadRows = job.settings().flag(JobKey.SKIP_BAD_ROWS, problems);
        Survey survey = new Surveyor(job, problems, progress).survey();
        checkRecipes(survey);
        Planner planner = new Planner();
        Map<Group, Map<Placement, SlotState>> slots = new LinkedHashMap<>();
        for (GroupSurvey group : survey.groups()) {
            Map<Placement, SlotState> states = group.slots();
            slots.put(group.group(), states);
            List<Placement> open = with(SlotState.OPEN, states);
            tellSkipped(group.group(), states);
            if (open.isEmpty()) {
                tellNoneOpen(group);
            } else {
                planner.add(group.group(), items(survey.rowsOfGroup().getOrDefault(group, List.of())), open);
            }
        }
        Plan plan = new Plan(planner.plates(), slots, survey.leftOut());
        return isSpoilt(plan, skipBadRows) ? Optional.empty() : Optional.of(plan);
    }

    /** Each recipe on each lens that it is used with, once. */
    private void checkRecipes(Survey survey) {
        Set<List<String>> checked = new HashSet<>();
        for (GroupSurvey groupSurvey : survey.groups()) {
            Group group = groupSurvey.group();
            if (checked.add(List.of(group.recipe().name(), group.lens().name()))) {
                new RecipeCheck(job.shop().machine(), group.lens(), problems)
                        .check(group.recipe(), job.shop().lenses());
            }
        }
    }

    private boolean isSpoilt(Plan plan, boolean skipBadRows) {
        if (!skipBadRows) {
            return problems.hasErrors();
        }
        if (plan.plates().isEmpty()) {
            problems.error(Place.of(job.order().file()), "no row is left to prepare", "correct the errors");
            return true;
        }
        return problems.sorted().stream().anyMatch(problem -> problem.isError() && !isOfARow(problem.place()));
    }

    private boolean isOfARow(Place place) {
        return place.file().equals(job.order().file())
                && place.line() > job.order().headerPlace(0).line();
    }

    private List<Integer> items(List<Integer> rows) {
        List<Integer> items = new ArrayList<>();
        for (int row : rows) {
            job.items().ofRow(row).stream().map(Item::number).forEach(items::add);
        }
        return items;
    }

    private void tellSkipped(Group group, Map<Placement, SlotState> states) {
        Place jig = Place.of(group.jig().name());
        tell(Severity.NOTE, jig, with(SlotState.UNUSABLE, states), "marked as not usable, and left empty", "");
        tell(
                Severity.WARNING,
                jig,
                with(SlotState.TOO_SMALL, states),
                "too small for some item of the group (" + group.describe() + "), and left empty",
                "use a jig whose pockets suit all items");
        tell(
                Severity.WARNING,
                jig,
                with(SlotState.OUT_OF_REACH, states),
                "out of reach of the lens " + group.lens().name() + " for some item of the group (" + group.describe()
                        + "), and left empty",
                "use a lens with a larger field, or --jig-centre");
    }

    private void tell(Severity severity, Place place, List<Placement> slots, String what, String remedy) {
        if (!slots.isEmpty()) {
            List<String> ids =
                    slots.stream().map(placement -> placement.slot().id()).toList();
            String are = ids.size() == 1 ? "slot " + ids.get(0) + " is " : "slots " + String.join(", ", ids) + " are ";
            problems.add(new dev.quoin.problem.Problem(severity, place, 0, are + what, remedy));
        }
    }

    private void tellNoneOpen(GroupSurvey survey) {
        Group group = survey.group();
        problems.error(
                Place.of(group.jig().name()),
                "no usable slot holds every item of the group (" + group.describe() + ") within reach of the lens "
                        + group.lens().name() + " (" + group.lens().reach().width() + " mm square)",
                "use a lens with a larger field, a smaller template or another jig");
    }

    private static List<Placement> with(SlotState state, Map<Placement, SlotState> states) {
        return states.entrySet().stream()
                .filter(entry -> entry.getValue() == state)
                .map(Map.Entry::getKey)
                .toList();
    }
}
