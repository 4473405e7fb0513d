package dev.quoin.job;

import dev.quoin.optics.RecipeCheck;
import dev.quoin.plate.Group;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Finds everything that is wrong with a job, and writes nothing. */
public final class Check {
    private final JobSettings settings;
    private final Progress progress;

    public Check(JobSettings settings, Progress progress) {
        this.settings = settings;
        this.progress = progress;
    }

    /**
     * Checks the job; {@code problems} may hold what was found in its settings.
     *
     * @throws IOException if a file that the job names is missing or cannot be read
     */
    public Outcome<Boolean> run(Problems problems) throws IOException {
        Optional<LoadedJob> job = new JobLoader(settings, problems).load();
        if (job.isPresent()) {
            Optional<Plan> plan = new Planning(job.get(), problems, progress).plan();
            plan.ifPresent(one -> tellFigures(job.get(), one, problems));
        }
        return new Outcome<>(Optional.of(!problems.hasErrors()), problems.sorted());
    }

    /** What each recipe does to the surface through each lens that it is used with. */
    private static void tellFigures(LoadedJob job, Plan plan, Problems problems) {
        Set<List<String>> told = new HashSet<>();
        for (Group group : plan.slots().keySet()) {
            if (told.add(List.of(group.recipe().name(), group.lens().name()))) {
                new RecipeCheck(job.shop().machine(), group.lens(), problems).figures(group.recipe());
            }
        }
    }
}
