package dev.quoin.cli;

import dev.quoin.job.JobKey;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.UsageMessageSpec;
import picocli.CommandLine.ParseResult;

/** The options of a job, one for each {@link JobKey}, added to the commands that take a job. */
final class JobArguments {
    private static final String DASHES = "--";

    private JobArguments() {}

    /** Gives a command the options of a job. */
    static CommandLine addTo(CommandLine command) {
        return addTo(command, JobKey.values());
    }

    /** Gives a command some of them. The help sorts them by topic; the parser has no groups, which take long to set up. */
    static CommandLine addTo(CommandLine command, JobKey... keys) {
        CommandSpec spec = command.getCommandSpec();
        spec.usageMessage().abbreviateSynopsis(true);
        List<OptionSpec> own = List.copyOf(spec.options());
        Arrays.stream(keys).map(JobArguments::option).forEach(spec::addOption);
        command.getHelpSectionMap()
                .put(UsageMessageSpec.SECTION_KEY_OPTION_LIST, help -> byTopic(help, own, List.of(keys)));
        return command;
    }

    private static String byTopic(Help help, List<OptionSpec> own, List<JobKey> keys) {
        StringBuilder text = new StringBuilder(help.optionListExcludingGroups(own));
        for (JobTopic topic : JobTopic.values()) {
            List<OptionSpec> options = keys.stream()
                    .filter(key -> JobTopic.of(key) == topic)
                    .map(key -> help.commandSpec().findOption(name(key)))
                    .toList();
            if (!options.isEmpty()) {
                text.append(help.createHeading("%n" + topic.title() + ":%n"))
                        .append(help.optionListExcludingGroups(options));
            }
        }
        return text.toString();
    }

    /** What was given on the command line. */
    static Map<JobKey, String> given(ParseResult result) {
        Map<JobKey, String> given = new EnumMap<>(JobKey.class);
        for (OptionSpec option : result.matchedOptions()) {
            Object value = option.getValue();
            JobKey.named(option.longestName().substring(DASHES.length()))
                    .ifPresent(key -> given.put(key, String.valueOf(value)));
        }
        return given;
    }

    private static String name(JobKey key) {
        return DASHES + key.option();
    }

    /** A per cent sign in a text of the help would begin a figure to fill in. */
    private static OptionSpec option(JobKey key) {
        String help = key.help().replace("%", "%%");
        Option<?> option = key.kind() == JobKey.Kind.FLAG
                ? Option.flag(name(key), help)
                : Option.text(name(key), key.label(), help);
        return option.spec();
    }
}
