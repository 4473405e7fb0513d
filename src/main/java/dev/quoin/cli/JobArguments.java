package dev.quoin.cli;

import dev.quoin.job.JobKey;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** The options of a job, one for each {@link JobKey}, added to the commands that take a job. */
final class JobArguments {
    private JobArguments() {}

    /** Gives a command the options of a job. */
    static CommandLine addTo(CommandLine command) {
        return addTo(command, JobKey.values());
    }

    /** Gives a command some of them. */
    static CommandLine addTo(CommandLine command, JobKey... keys) {
        CommandSpec spec = command.getCommandSpec();
        spec.usageMessage().abbreviateSynopsis(true);
        for (JobTopic topic : JobTopic.values()) {
            List<JobKey> own =
                    Arrays.stream(keys).filter(key -> JobTopic.of(key) == topic).toList();
            if (!own.isEmpty()) {
                spec.addArgGroup(group(topic, own));
            }
        }
        return command;
    }

    /** What was given on the command line. */
    static Map<JobKey, String> given(ParseResult result) {
        Map<JobKey, String> given = new EnumMap<>(JobKey.class);
        for (JobKey key : JobKey.values()) {
            OptionSpec option = result.matchedOption("--" + key.option());
            if (option != null) {
                Object value = option.getValue();
                given.put(key, String.valueOf(value));
            }
        }
        return given;
    }

    private static ArgGroupSpec group(JobTopic topic, List<JobKey> keys) {
        ArgGroupSpec.Builder group =
                ArgGroupSpec.builder().validate(false).order(topic.ordinal()).heading("%n" + topic.title() + ":%n");
        keys.forEach(key -> group.addArg(option(key)));
        return group.build();
    }

    /** A dollar sign would begin a variable of the help. */
    private static OptionSpec option(JobKey key) {
        OptionSpec.Builder option =
                OptionSpec.builder("--" + key.option()).description(key.help().replace("$", "$$"));
        return key.kind() == JobKey.Kind.FLAG
                ? option.type(Boolean.class).arity("0").build()
                : option.type(String.class).paramLabel(key.label()).arity("1").build();
    }
}
