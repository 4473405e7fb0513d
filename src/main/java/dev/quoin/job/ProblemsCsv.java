package dev.quoin.job;

import dev.quoin.problem.Problem;
import dev.quoin.table.TableWriter;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** {@code problems.csv}: what was found while the run was prepared. */
final class ProblemsCsv {
    private static final List<String> HEADER =
            List.of("severity", "file", "line", "column", "item", "message", "remedy");

    private ProblemsCsv() {}

    static void write(Appendable out, List<Problem> problems) throws IOException {
        TableWriter table = new TableWriter(out);
        table.row(HEADER);
        for (Problem problem : problems) {
            table.row(List.of(
                    problem.severity().name().toLowerCase(Locale.ROOT),
                    problem.place().file(),
                    number(problem.place().line()),
                    number(problem.place().column()),
                    number(problem.item()),
                    problem.message(),
                    problem.remedy()));
        }
    }

    private static String number(int value) {
        return value == 0 ? "" : Integer.toString(value);
    }
}
