package dev.quoin.job;

import dev.quoin.optics.RecipeCheck;
import dev.quoin.plate.Group;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
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
        boolean skipBadRows = job.settings().flag(JobKey.SKIP_BAD_ROWS);
        // Only papers need it, but a wrong name is to be told before anything is written.
        Role.column(job.order(), job.settings(), JobKey.PACKING_BY, problems);
        Layout layout = new Layout(job, problems);
        Survey survey = new Surveyor(job, problems, progress).survey();
        Survey chosen = layout.throughChosenLenses(survey);
        survey.tellFineCodes(chosen, problems);
        Plan plan = layout.plan(chosen);
        checkRecipes(plan);
        new SharedSizeCheck(job, plan, problems).check();
        return isSpoilt(plan, skipBadRows) ? Optional.empty() : Optional.of(plan);
    }

    /** Each recipe on each lens that it is used with, once. */
    private void checkRecipes(Plan plan) {
        Set<List<String>> checked = new HashSet<>();
        for (Group group : plan.slots().keySet()) {
            if (checked.add(List.of(group.recipe().name(), group.lens().name()))) {
                new RecipeCheck(job.shop().machine(), group.lens(), problems)
                        .check(group.recipe(), job.shop().lenses());
            }
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
