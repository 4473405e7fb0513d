package dev.quoin.cli;

import dev.quoin.problem.Problem;
import dev.quoin.problem.Severity;
import java.io.PrintWriter;
import java.util.List;

/** What is said to the user: results on standard output, problems on standard error. */
final class Console {
    /** More problems than this are counted, not told. */
    static final int MOST_PROBLEMS = 1_000;

    private final PrintWriter out;
    private final PrintWriter err;
    private final boolean terminal;

    Console(PrintWriter out, PrintWriter err, boolean terminal) {
        this.out = out;
        this.err = err;
        this.terminal = terminal;
    }

    boolean isTerminal() {
        return terminal;
    }

    void say(String line) {
        out.println(line);
    }

    void complain(String line) {
        err.println(line);
    }

    /** Problems, one a line, the first thousand, then a count. */
    void complain(List<Problem> problems) {
        problems.stream().limit(MOST_PROBLEMS).forEach(problem -> err.println(colour(problem)));
        if (problems.size() > MOST_PROBLEMS) {
            err.println("... and " + (problems.size() - MOST_PROBLEMS) + " more");
        }
        err.flush();
    }

    private String colour(Problem problem) {
        if (!terminal || problem.severity() == Severity.NOTE) {
            return problem.toString();
        }
        return (problem.isError() ? "\u001B[31m" : "\u001B[33m") + problem + "\u001B[0m";
    }

    /** Says a line at once, where more may follow much later. */
    void sayNow(String line) {
        say(line);
        out.flush();
    }
}
