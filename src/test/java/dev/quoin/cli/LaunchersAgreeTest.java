package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The two launchers start Java alike: what they tell it, and when, stands in both in the same order. */
class LaunchersAgreeTest {
    private final String shell = withoutRemarks("quoin", "#");
    private final String batch = withoutRemarks("quoin.bat", "rem ");

    private static String withoutRemarks(String launcher, String remark) {
        try (Stream<String> lines = Files.lines(Path.of("src/dist/bin", launcher))) {
            return lines.map(String::strip)
                    .filter(line -> !line.startsWith(remark))
                    .collect(Collectors.joining("\n"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> found(String pattern, String in) {
        return Pattern.compile(pattern)
                .matcher(in)
                .results()
                .map(MatchResult::group)
                .toList();
    }

    @Test
    void bothGiveJavaTheSameOptionsInTheSameCases() {
        String option = "(?<=[\\s\"=])-(X|D|jar|cp)[\\w:+.=-]*";
        List<String> options = found(option, shell);
        assertTrue(options.contains("-Xmn64m"), options.toString());
        assertTrue(options.contains("-XX:AOTCache="), options.toString());
        assertEquals(options, found(option, batch));
    }

    @Test
    void bothTakeTheSameOrdersForLarge() {
        assertEquals(
                List.of("prepare | check | quote | proof | extend | verify"),
                found("prepare( \\| \\w+)+(?=\\))", shell));
        assertEquals(List.of("prepare check quote proof extend verify"), found("prepare( \\w+)+(?=\\))", batch));
        assertEquals(List.of("-size +200k"), found("-size \\S+", shell));
        assertEquals(List.of("gtr " + 200 * 1024), found("gtr \\d+", batch));
        assertEquals(
                List.of("\"$2\" \"$2/order.csv\" \"$2/inputs/order.csv\""),
                found("\"\\$2\"( \"\\$2/[^\"]*\")+", shell));
        assertEquals(
                List.of("\"%~2\" \"%~2\\order.csv\" \"%~2\\inputs\\order.csv\""),
                found("\"%~2\"( \"%~2\\\\[^\"]*\")+", batch));
    }

    @Test
    void bothSayTheSame() {
        String remedy = "install a Java runtime 17 or later, or set JAVA_HOME( to one)?";
        assertEquals(2, found(remedy, shell).size());
        assertEquals(found(remedy, shell), found(remedy, batch));
    }
}
