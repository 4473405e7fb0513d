package dev.quoin.cli;

import dev.quoin.geometry.Decimals;
import dev.quoin.job.Reprint;
import dev.quoin.job.RunSummary;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Severity;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** What a command says at its end: to a person in a few lines, to a script as JSON. */
final class SummaryText {

    private SummaryText() {}

    static List<String> lines(RunSummary summary, List<Problem> problems, Path workingFolder) {
        return lines("items", summary, problems, workingFolder);
    }

    /** @param items what the run's items are */
    static List<String> lines(String items, RunSummary summary, List<Problem> problems, Path workingFolder) {
        List<String> lines = new ArrayList<>();
        lines.add(field("run", summary.name()));
        lines.add(field("plates", Integer.toString(summary.plates())));
        lines.add(field(items, Integer.toString(summary.items())));
        lines.add(field(
                "blanks",
                summary.blanks().entrySet().stream()
                        .map(entry -> blanks(entry.getValue(), "", entry.getKey())
                                + spares(summary.spares().get(entry.getKey())))
                        .collect(Collectors.joining(", "))));
        if (summary.rowsLeftOut() > 0) {
            lines.add(field(
                    "left out", rows(summary.rowsLeftOut()) + " with errors; they are named first on the run sheet"));
        }
        lines.add(field(
                "time",
                duration(summary.total()) + "  (laser " + duration(summary.marking()) + ", handling "
                        + duration(summary.handling()) + ")"));
        lines.add(field("files", relative(summary.folder(), workingFolder)));
        lines.add(field("look first", lookFirst(summary, problems, workingFolder)));
        return lines;
    }

    /** A run that may be made many times, in half a line. */
    static String watched(RunSummary summary, List<Problem> problems, Path workingFolder) {
        return relative(summary.folder(), workingFolder) + ": " + number(summary.plates(), "plate") + ", "
                + number(summary.items(), "item") + ", " + count(problems);
    }

    /** How many of a blank, by its name; if it has none, as this noun. */
    static String blanks(int count, String noun, String name) {
        return name.equals(RunSummary.UNNAMED) ? count + noun + " (not named)" : count + " x " + name;
    }

    private static String number(int count, String noun) {
        return count + " " + noun + (count == 1 ? "" : "s");
    }

    static String refused(List<Problem> problems) {
        return "nothing was written: " + count(problems);
    }

    /** How many problems of each kind. */
    static String count(List<Problem> problems) {
        if (problems.isEmpty()) {
            return "no problems found";
        }
        List<String> counts = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            long count = problems.stream()
                    .filter(problem -> problem.severity() == severity)
                    .count();
            if (count > 0) {
                counts.add(count + " " + severity.name().toLowerCase(Locale.ROOT) + (count == 1 ? "" : "s"));
            }
        }
        return String.join(", ", counts);
    }

    /** Hours, minutes and seconds as a person says them, rounded to what is shown, as papers do. */
    static String duration(double seconds) {
        long all = Math.round(seconds);
        if (all >= 3600) {
            long minutes = Math.round(seconds / 60);
            return minutes / 60 + " h " + minutes % 60 + " min";
        }
        return all >= 60 ? all / 60 + " min " + all % 60 + " s" : all + " s";
    }

    static String json(RunSummary summary, List<Problem> problems) {
        return "{\"run\":" + quote(summary.name())
                + ",\"folder\":" + quote(summary.folder().toString())
                + ",\"sheets\":"
                + summary.sheets().stream().map(SummaryText::quote).collect(Collectors.joining(",", "[", "]"))
                + ",\"plates\":" + summary.plates()
                + ",\"items\":" + summary.items()
                + ",\"blanks\":" + blanks(summary.blanks())
                + ",\"spares\":" + blanks(summary.spares())
                + ",\"rowsLeftOut\":" + summary.rowsLeftOut()
                + ",\"markingSeconds\":" + Decimals.seconds(summary.marking())
                + ",\"handlingSeconds\":" + Decimals.seconds(summary.handling())
                + ",\"totalSeconds\":" + Decimals.seconds(summary.total())
                + ",\"problems\":" + list(problems) + "}";
    }

    /** Counts by the names of blanks, as JSON; those that no job names are called {@code blank}. */
    static String blanks(Map<String, Integer> counts) {
        return counts.entrySet().stream()
                .map(entry -> quote(entry.getKey().equals(RunSummary.UNNAMED) ? "blank" : entry.getKey()) + ":"
                        + entry.getValue())
                .collect(Collectors.joining(",", "{", "}"));
    }

    static String json(List<Problem> problems) {
        return "{\"problems\":" + list(problems) + "}";
    }

    static String line(Reprint.Written written, Path run, Path workingFolder) {
        return written.files().stream()
                        .map(file -> relative(run.resolve(file), workingFolder))
                        .collect(Collectors.joining(", "))
                + (written.plates().size() == 1 ? "  plate " : "  plates ")
                + written.plates().stream().map(String::valueOf).collect(Collectors.joining(", ")) + ", "
                + (written.items().size() == 1 ? "item " : "items ")
                + written.items().stream().map(String::valueOf).collect(Collectors.joining(", ")) + ", "
                + duration(written.seconds());
    }

    static String reprints(List<Reprint.Written> written) {
        return written.stream()
                .map(one -> "{\"file\":" + quote(one.file()) + ",\"sheet\":" + quote(one.sheet()) + ",\"plates\":"
                        + one.plates() + ",\"items\":" + one.items() + ",\"seconds\":"
                        + Decimals.seconds(one.seconds()) + "}")
                .collect(Collectors.joining(",", "{\"reprints\":[", "]}"));
    }

    static String list(List<Problem> problems) {
        return problems.stream().map(SummaryText::json).collect(Collectors.joining(",", "[", "]"));
    }

    private static String json(Problem problem) {
        return "{\"severity\":" + quote(problem.severity().name().toLowerCase(Locale.ROOT))
                + ",\"file\":" + quote(problem.place().file())
                + ",\"line\":" + problem.place().line()
                + ",\"column\":" + problem.place().column()
                + ",\"item\":" + problem.item()
                + ",\"message\":" + quote(problem.message())
                + ",\"remedy\":" + quote(problem.remedy()) + "}";
    }

    /** A JSON string (RFC 8259, section 7). */
    static String quote(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' || c == '\\') {
                quoted.append('\\').append(c);
            } else if (c < ' ') {
                quoted.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
            } else {
                quoted.append(c);
            }
        }
        return quoted.append('"').toString();
    }

    private static String lookFirst(RunSummary summary, List<Problem> problems, Path workingFolder) {
        String sheet = sheets(summary, workingFolder);
        long told = problems.stream()
                .filter(problem -> problem.severity() != Severity.NOTE)
                .count();
        // Rows that are left out have errors.
        String one = problems.stream().anyMatch(Problem::isError) ? "problem" : "warning";
        return told == 0 ? sheet : "the " + (told == 1 ? one : told + " " + one + "s") + " above, then " + sheet;
    }

    /** Where the run sheet is, in each of its kinds. */
    static String sheets(RunSummary summary, Path workingFolder) {
        return summary.sheets().stream()
                .map(file -> relative(summary.folder().resolve(file), workingFolder))
                .collect(Collectors.joining(" or "));
    }

    private static String field(String name, String value) {
        return String.format(Locale.ROOT, "%-11s %s", name, value);
    }

    private static String spares(int count) {
        return count == 0 ? "" : " and " + count + " to spare";
    }

    private static String rows(int count) {
        return count == 1 ? "1 row" : count + " rows";
    }

    /** The files that a command wrote, as JSON. */
    static String files(List<Path> written, Path workingFolder) {
        return written.stream()
                .map(file -> quote(relative(file, workingFolder)))
                .collect(java.util.stream.Collectors.joining(", ", "{\"files\": [", "]}"));
    }

    static String relative(Path path, Path workingFolder) {
        return path.startsWith(workingFolder) ? workingFolder.relativize(path).toString() : path.toString();
    }
}
