package dev.quoin.cli;

import dev.quoin.job.JobSettings;
import dev.quoin.job.JobSettingsReader;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.nio.file.Path;

/** The job that a command is about; its options are those of {@link JobArguments}. */
final class JobParameter {
    private final Parameter<String> job =
            Parameter.text("JOB", "A job folder (order.csv and job.properties), or an order CSV.");

    Parameter<String> parameter() {
        return job;
    }

    /** Everything that is set for the job, on the command line and in its folder. */
    JobSettings settings(Path workingFolder, Problems problems) throws IOException {
        return new JobSettingsReader(workingFolder)
                .read(job.value(), JobArguments.given(job.commandLine().getParseResult()), problems);
    }
}
