package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The README's commands are commands of the program, and its two marked ones stand where {@code .ci/run} looks. */
class ReadmeTest {
    private static final Path README = Path.of("README.md");
    private static final Pattern BLOCK = Pattern.compile("```sh\\R(.*?)```", Pattern.DOTALL);
    private static final Pattern COMMAND =
            Pattern.compile("(?:^|&& )(?:quoin|java -jar target/quoin\\.jar) ([^&|#\\n]+)", Pattern.MULTILINE);
    private static final Pattern WORD = Pattern.compile("(?:\"[^\"]*\"|'[^']*'|[^\\s\"'])+");

    private String readme;

    @BeforeEach
    void read() throws Exception {
        Assumptions.assumeTrue(Files.exists(README), "skipped: there is no README.md yet");
        readme = Files.readString(README);
    }

    @Test
    void theTwoMarkedCommandsAreThere() {
        assertTrue(marked("run the main job").contains("java -jar target/quoin.jar prepare sample-orders/"));
        assertEquals("mvn verify", marked("run the tests"));
    }

    @Test
    void everyCommandIsOneThatTheProgramKnows() {
        List<String> commands = commands();
        assertTrue(commands.size() >= 2, commands.toString());
        for (String command : commands) {
            Quoin quoin = new Quoin(
                    new PrintWriter(new StringWriter()), new PrintWriter(new StringWriter()), Path.of(""), false);
            assertDoesNotThrow(() -> quoin.commandLine().parseArgs(words(command)), command);
        }
    }

    /** As a shell splits it: blanks inside quotes separate nothing. */
    private static String[] words(String command) {
        return WORD.matcher(command)
                .results()
                .map(word -> word.group().replaceAll("[\"']", ""))
                .toArray(String[]::new);
    }

    private String marked(String name) {
        int mark = readme.indexOf("<!-- " + name + " -->");
        assertTrue(mark >= 0, "no mark for: " + name);
        Matcher block = BLOCK.matcher(readme);
        assertTrue(block.find(mark), "no command for: " + name);
        return block.group(1).strip();
    }

    private List<String> commands() {
        List<String> commands = new ArrayList<>();
        Matcher block = BLOCK.matcher(readme);
        while (block.find()) {
            Matcher command = COMMAND.matcher(block.group(1).replaceAll("\\\\\\R\\s*", " "));
            while (command.find()) {
                commands.add(command.group(1).strip());
            }
        }
        return commands;
    }
}
