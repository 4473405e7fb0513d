package dev.quoin.job;

import dev.quoin.problem.Problems;
import dev.quoin.store.RunFolder;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;

/** Prepares a job: from its files to a run folder. */
public final class Prepare {
    private final JobSettings settings;
    private final Progress progress;
    private final HeadStart ahead;
    private Set<Path> inputFolders = Set.of();

    public Prepare(JobSettings settings, Progress progress) {
        this(settings, progress, HeadStart.none());
    }

    /**
     * The same for a program that has just started.
     *
     * @param ahead begun by it
     */
    public Prepare(JobSettings settings, Progress progress, HeadStart ahead) {
        this.settings = settings;
        this.progress = progress;
        this.ahead = ahead;
    }

    /**
     * Prepares the job; {@code problems} may hold what was found in its settings.
     *
     * @return what the run comes to; nothing, and nothing written, where there are errors
     * @throws IOException if a file that the job names is missing or cannot be read, or the run cannot be written
     */
    public Outcome<RunSummary> run(Problems problems) throws IOException {
        Path out = settings.out();
        boolean replace = settings.flag(JobKey.REPLACE);
        RunFolder.checkFree(out, replace);
        Optional<LoadedJob> job = new JobLoader(settings, problems).load();
        if (job.isEmpty()) {
            return new Outcome<>(Optional.empty(), problems.sorted());
        }
        Optional<Plan> plan = new Planning(job.get(), problems, progress).plan();
        inputFolders = job.get().files().folders();
        if (plan.isEmpty()) {
            return new Outcome<>(Optional.empty(), problems.sorted());
        }
        ahead.papers();
        try (RunFolder folder = RunFolder.begin(out, replace)) {
            RunSummary summary =
                    new RunWriter(job.get().making(plan.get().items()), plan.get(), problems, folder, progress).write();
            folder.publish();
            return new Outcome<>(Optional.of(summary.at(out)), problems.sorted());
        } catch (FileSystemException named) {
            throw named;
        } catch (IOException e) {
            // A full disk does not say which file it was.
            throw new FileSystemException(
                    out.toString(),
                    null,
                    "the run could not be written (" + e.getMessage()
                            + "), and nothing of it is left; make room, or choose another place with --out");
        }
    }

    /** The folders of the files that it has read so far. */
    public Set<Path> inputFolders() {
        return inputFolders;
    }
}
