package dev.quoin.cli;

import dev.quoin.job.JobSettings;
import dev.quoin.job.JobSettingsReader;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The job that a command is about; its options are those of {@link JobArguments}. */
final class JobParameter {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec command;

    @Parameters(paramLabel = "JOB", description = "A job folder (order.csv and job.properties), or an order CSV.")
    private String job;

    /** Everything that is set for the job, on the command line and in its folder. */
    JobSettings settings(Path workingFolder, Problems problems) throws IOException {
        return new JobSettingsReader(workingFolder)
                .read(job, JobArguments.given(command.commandLine().getParseResult()), problems);
    }
}
