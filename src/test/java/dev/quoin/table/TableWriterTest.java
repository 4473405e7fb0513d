package dev.quoin.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.quoin.problem.Problems;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class TableWriterTest {
    @Test
    void quotesOnlyWhereRfc4180AsksForThem() throws IOException {
        assertEquals(
                "plain, outer blanks ,semi;colon,\"a,b\",\"say \"\"hi\"\"\",\"two\nlines\",\n\"\"\n",
                write(List.of(
                        List.of("plain", " outer blanks ", "semi;colon", "a,b", "say \"hi\"", "two\nlines", ""),
                        List.of(""))));
    }

    @Property(tries = 500, seed = "2026")
    void whatIsWrittenIsReadBack(@ForAll("tables") List<List<String>> rows) throws IOException {
        Problems problems = new Problems();
        byte[] content = write(rows).getBytes(StandardCharsets.UTF_8);
        Table table = TableReader.read("t", content, Optional.of(','), problems)
                .orElseThrow(() -> new AssertionError(problems.sorted()));
        assertEquals(rows, Tables.rows(table));
        assertEquals(List.of(), problems.sorted());
    }

    @Provide
    Arbitrary<List<List<String>>> tables() {
        Arbitrary<String> cell = Arbitraries.oneOf(
                Arbitraries.strings().withChars(" ,;\t\"\r\n'ab").ofMaxLength(6),
                Arbitraries.strings()
                        .all()
                        .ofMaxLength(8)
                        .map(text -> text.codePoints()
                                .filter(c -> !Character.isISOControl(c)
                                        && c != 0xFFFD
                                        && c != 0xFEFF
                                        && Character.getType(c) != Character.SURROGATE)
                                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                                .toString()));
        return Arbitraries.integers()
                .between(1, 5)
                .flatMap(columns -> cell.list()
                        .ofSize(columns)
                        .list()
                        .ofMaxSize(6)
                        .map(rows -> {
                            List<List<String>> all = new ArrayList<>();
                            all.add(IntStream.range(0, columns)
                                    .mapToObj(i -> "col " + i)
                                    .toList());
                            all.addAll(rows);
                            return all;
                        }));
    }

    private static String write(List<List<String>> rows) throws IOException {
        StringBuilder out = new StringBuilder();
        TableWriter writer = new TableWriter(out);
        for (List<String> row : rows) {
            writer.row(row);
        }
        return out.toString();
    }
}
