package dev.quoin.job;

import dev.quoin.problem.Problems;
import java.io.IOException;
import java.util.Optional;

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
            new Planning(job.get(), problems, progress).plan();
        }
        return new Outcome<>(Optional.of(!problems.hasErrors()), problems.sorted());
    }
}
