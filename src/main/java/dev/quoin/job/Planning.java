package dev.quoin.job;

import dev.quoin.optics.RecipeCheck;
import dev.quoin.plate.Group;
import dev.quoin.plate.GroupSurvey;
import dev.quoin.plate.Plate;
import dev.quoin.plate.Seat;
import dev.quoin.plate.StepColour;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Recipe;
import dev.quoin.shop.Slot;
import dev.quoin.shop.Step;
import dev.quoin.toolpath.Thickness;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;

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
        boolean skipBadRows = job.settings().flag(JobKey.SKIP_BAD_ROWS);
        Kinds.of(job.settings(), problems);
        // Only papers need it, but a wrong name is to be told before anything is written.
        Role.column(job.order(), job.settings(), JobKey.PACKING_BY, problems);
        Layout layout = new Layout(job, problems);
        Survey survey = new Surveyor(job, problems, progress).survey();
        Survey chosen = layout.throughChosenLenses(survey);
        survey.tellFineCodes(chosen, problems);
        Plan plan = layout.plan(chosen);
        checkRecipes(plan);
        checkHeights(plan);
        new SharedSizeCheck(job.making(plan.items()), plan, problems).check();
        checkDetails(chosen);
        return isSpoilt(plan, skipBadRows) ? Optional.empty() : Optional.of(plan);
    }

    /** Each recipe on each lens that it is used with, once. */
    private void checkRecipes(Plan plan) {
        Set<List<String>> checked = new HashSet<>();
        for (Group group : plan.slots().keySet()) {
            if (checked.add(List.of(group.recipe().name(), group.lens().name()))) {
                new RecipeCheck(job.shop().machine(), group.lens(), problems)
                        .check(group.recipe(), job.shop().lenses());
                checkColours(group.recipe());
            }
        }
    }

    /** Software that tells steps apart by colour would give those of one colour the same settings. */
    private void checkColours(Recipe recipe) {
        int steps = recipe.steps().size();
        int colours = StepColour.values().length;
        if (steps > colours && !job.settings().flag(JobKey.SPLIT_STEPS)) {
            problems.warning(
                    recipe.place(),
                    "recipe '" + recipe.name() + "' has " + steps + " steps, and plate files have " + colours
                            + " colours, so that some steps share one",
                    "where your software goes by colour, ask for a file for each step with --split-steps");
        }
    }

    /** Each height of the pockets that are filled, against the depth of focus. */
    private void checkHeights(Plan plan) {
        Map<Group, Map<Double, Set<String>>> slots = new LinkedHashMap<>();
        for (Plate plate : plan.plates()) {
            Map<Double, Set<String>> byHeight = slots.computeIfAbsent(plate.group(), made -> new TreeMap<>());
            for (Seat seat : plate.seats()) {
                Slot slot = seat.placement().slot();
                byHeight.computeIfAbsent(slot.z(), made -> new LinkedHashSet<>())
                        .add(slot.id());
            }
        }
        slots.forEach((group, byHeight) -> {
            RecipeCheck check = new RecipeCheck(job.shop().machine(), group.lens(), problems);
            byHeight.forEach((z, ids) -> check.height(group.recipe(), surface(group, ids), z));
        });
    }

    private static String surface(Group group, Set<String> ids) {
        String others = ids.size() == 1 ? "" : " (and " + (ids.size() - 1) + " more)";
        return "jig '" + group.jig().name() + "', slot " + ids.iterator().next() + others;
    }

    /** The finest detail of each fill step on each lens, against the spot and the step's inset. */
    private void checkDetails(Survey survey) {
        Map<List<String>, List<GroupSurvey>> alike = new LinkedHashMap<>();
        for (GroupSurvey group : survey.groups()) {
            List<String> key =
                    List.of(group.group().recipe().name(), group.group().lens().name());
            alike.computeIfAbsent(key, made -> new ArrayList<>()).add(group);
        }
        alike.values().forEach(this::checkDetails);
    }

    private void checkDetails(List<GroupSurvey> groups) {
        Group group = groups.get(0).group();
        RecipeCheck check = new RecipeCheck(job.shop().machine(), group.lens(), problems);
        for (Step step : group.recipe().steps()) {
            double enough = Math.max(check.spot(), 2 * step.inset() + Thickness.ACCURACY);
            groups.stream()
                    .map(survey -> survey.finestDetail(step, enough))
                    .flatMapToDouble(OptionalDouble::stream)
                    .min()
                    .ifPresent(smallest -> {
                        check.detail(group.recipe(), step, smallest);
                        check.inset(group.recipe(), step, smallest);
                    });
        }
    }

    private boolean isSpoilt(Plan plan, boolean skipBadRows) {
        if (skipBadRows && plan.plates().isEmpty()) {
            problems.error(Place.of(job.order().file()), "no row is left to prepare", "correct the errors");
            return true;
        }
        return new RowErrors(job, problems).stopTheJob(skipBadRows);
    }
}
