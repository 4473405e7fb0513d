package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.job.JobKey;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** Given a command line that cannot be meant, then status 2, a line that says why, and where help is. */
class WrongUsageTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "prepare job --tempalte x.svg | quoin prepare: unknown option '--tempalte'",
                "prepare                      | quoin prepare: missing required parameter: 'JOB'",
                "prepare job --lens           | quoin prepare: missing required parameter for option '--lens' (NAME)",
                "done runs/job                | 'quoin done: missing required argument (specify one of these): "
                        + "(--plate=NUMBER | --reprint=NUMBER)'",
                "prepaer job                  | quoin: unknown command 'prepaer'",
                "prepare my job               | quoin prepare: 'job' is one word too many; put quotes around a name that holds blanks",
                "done runs/job --plate 1-2    | quoin done: invalid value for option '--plate': '1-2' is no whole number",
                "jig --pitch-x 4O --out x     | quoin jig: invalid value for option '--pitch-x': '4O' is no number",
                "reprint runs/job             | quoin reprint: say which items: --item, --plate or --failed",
                "reprint runs/job --item two  | quoin reprint: --item 'two' is no list of numbers such as 37,52-54",
                "reprint runs/job --item 2-1  | quoin reprint: --item '2-1' is no list of numbers such as 37,52-54",
                "reprint runs/job --item 1,2 --slot A1 | quoin reprint: --slot takes one --item at a time, and no --pack",
            })
    void endsWithStatus2(String line, String said) {
        QuoinRun run = new JobFolder(folder).quoin(line.split(" +"));
        assertEquals(said, run.err().get(0));
        String command = said.substring(0, said.indexOf(':'));
        assertEquals(
                "'" + command + " --help' shows how it is used",
                run.err().get(run.err().size() - 1));
        assertEquals(2, run.status());
        assertFalse(Files.exists(folder.resolve("runs")));
    }

    /** Of any command: those of a job, those of one command, and those that all have. */
    @Test
    void aFlagThatIsGivenWithAValueIsRefusedByEveryCommand() {
        Map<String, List<String>> flags = flags();
        assertTrue(flags.get("jig").containsAll(List.of("--replace", "--arrow", "--quiet", "--help")));
        flags.forEach((command, names) -> names.forEach(flag -> {
            QuoinRun run = new JobFolder(folder).quoin(command, flag + "=true");
            assertEquals(2, run.status(), command);
            assertEquals(
                    List.of(
                            "quoin " + command + ": option '" + flag + "' should be specified without 'true' parameter",
                            "'quoin " + command + " --help' shows how it is used"),
                    run.err());
        }));
    }

    /** The names of each command's flags. */
    private Map<String, List<String>> flags() {
        Map<String, List<String>> flags = new TreeMap<>();
        commands()
                .forEach((name, command) -> flags.put(
                        name,
                        command.getCommandSpec().options().stream()
                                .filter(option -> option.type() == Boolean.class)
                                .map(OptionSpec::longestName)
                                .toList()));
        return flags;
    }

    private Map<String, CommandLine> commands() {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        Map<String, CommandLine> commands = new TreeMap<>(
                new Quoin(nowhere, nowhere, folder, false).commandLine().getSubcommands());
        commands.remove("help");
        return commands;
    }

    @ParameterizedTest
    @ValueSource(strings = {"--help", "prepare --help", "check --help", "reprint --help", "help prepare"})
    void helpIsStatus0AndShowsAnExampleThatIsACommand(String line) {
        QuoinRun run = new JobFolder(folder).quoin(line.split(" "));
        assertEquals(0, run.status());
        assertTrue(
                run.out().stream().anyMatch(one -> one.contains("  quoin ")),
                () -> "no example: " + String.join("\n", run.out()));
        assertTrue(run.out().stream().allMatch(one -> one.length() <= 80), "a line is wider than a terminal");
    }

    /** What is wider is broken, also after a colon in the middle of a word, and cannot be copied. */
    @Test
    void noExampleOfAnyHelpIsWiderThanATerminal() {
        commands().forEach((name, command) -> {
            List<String> examples = Stream.of(
                            command.getCommandSpec().usageMessage().footer())
                    .filter(line -> line.startsWith("  "))
                    .toList();
            assertTrue(examples.stream().anyMatch(line -> line.startsWith("  quoin " + name)), name);
            examples.forEach(line -> assertTrue(line.length() <= 80, name + ": " + line));
        });
    }

    @Test
    void theHelpOfPrepareListsEveryOptionOnceUnderItsTopic() {
        List<String> help = new JobFolder(folder).quoin("prepare", "--help").out();
        for (JobTopic topic : JobTopic.values()) {
            assertEquals(
                    1,
                    help.stream()
                            .filter(line -> line.equals(topic.title() + ":"))
                            .count(),
                    topic.title());
        }
        for (JobKey key : JobKey.values()) {
            String option = " --" + key.option();
            long lines = help.stream()
                    .filter(line -> line.strip().split("[ =]")[0].equals(option.strip()))
                    .count();
            assertEquals(1, lines, option);
        }
        assertTrue(help.stream().anyMatch(line -> line.contains("for ${serial};")), "dollar signs are kept");
        assertTrue(help.stream().anyMatch(line -> line.startsWith("  -h, --help")), "names are written out");
    }

    @Test
    void aJobThatIsNotThereIsStatus3() {
        QuoinRun run = new JobFolder(folder).quoin("prepare", "jbo");
        assertEquals(3, run.status());
        assertEquals(List.of("jbo: there is no such job; give a job folder or an order CSV"), run.err());
    }
}
