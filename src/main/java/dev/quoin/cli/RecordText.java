package dev.quoin.cli;

import dev.quoin.geometry.Decimals;
import dev.quoin.job.Done;
import dev.quoin.job.Extend;
import dev.quoin.job.Outcome;
import dev.quoin.job.RunSummary;
import dev.quoin.job.Status;
import dev.quoin.verify.Proof;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What is said of a run after it was prepared. */
final class RecordText {
    private RecordText() {}

    static String line(Proof proof) {
        return "proven: " + count(proof.files(), "file") + " unchanged; "
                + count(proof.items(), "item") + ", each once, on " + count(proof.plates(), "plate")
                + ", as the order asks for; "
                + count(proof.marks(), "mark") + " in pockets and in reach; "
                + count(proof.codes(), "code") + " read back; counts and times add up; "
                + count(proof.reprints(), "reprint") + " equal to the originals; "
                + count(proof.events(), "line") + " of record as added. "
                + "Not proven: the laser, the material, nor how well a marked code can be read";
    }

    private static String count(long count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    static String json(Outcome<Proof> outcome) {
        String proof = outcome.result()
                .map(one -> "\"files\":" + one.files() + ",\"items\":" + one.items() + ",\"plates\":" + one.plates()
                        + ",\"marks\":" + one.marks() + ",\"codes\":" + one.codes() + ",\"reprints\":" + one.reprints()
                        + ",\"events\":"
                        + one.events() + ",")
                .orElse("");
        String problems = SummaryText.json(outcome.problems());
        return "{\"proven\":" + outcome.result().isPresent() + "," + proof + problems.substring(1);
    }

    static String line(Done.Recorded recorded) {
        String time = recorded.took().isPresent()
                ? " in " + SummaryText.duration(recorded.took().getAsDouble())
                : "";
        String failed = recorded.failed().isEmpty() ? "" : ", failed: " + numbers(recorded.failed());
        return recorded.loading() + " done" + time + failed + "; " + recorded.plates() + " of " + recorded.of()
                + " plates done";
    }

    static String json(Done.Recorded recorded) {
        return "{\"" + (recorded.loading().reprint() ? "reprint" : "plate") + "\":"
                + recorded.loading().number()
                + (recorded.took().isPresent()
                        ? ",\"tookSeconds\":" + Decimals.seconds(recorded.took().getAsDouble())
                        : "")
                + ",\"failed\":" + List.copyOf(recorded.failed()) + ",\"platesDone\":" + recorded.plates()
                + ",\"plates\":" + recorded.of() + "}";
    }

    static List<String> lines(Status.Report report) {
        List<String> lines = new ArrayList<>();
        lines.add(field("run", report.run()));
        lines.add(field(
                "plates",
                report.platesDone() + " of " + report.plates() + " done"
                        + (report.next() == 0 ? "" : "; next is plate " + report.next())));
        lines.add(field("failed", report.failed() == 0 ? "none" : report.failed() + ": " + reasons(report)));
        lines.add(field("redone", Integer.toString(report.redone())));
        lines.add(field("to reprint", numbers(report.toReprint())));
        lines.add(field("to mark", report.toMark().isEmpty() ? "none" : "reprints of " + numbers(report.toMark())));
        lines.add(field("time left", SummaryText.duration(report.secondsLeft()) + ", without setting up"));
        return lines;
    }

    static String json(Status.Report report) {
        String reasons = report.failures().entrySet().stream()
                .map(entry -> SummaryText.quote(entry.getKey()) + ":" + entry.getValue())
                .collect(Collectors.joining(",", "{", "}"));
        return "{\"run\":" + SummaryText.quote(report.run())
                + ",\"plates\":" + report.plates()
                + ",\"platesDone\":" + report.platesDone()
                + ",\"nextPlate\":" + report.next()
                + ",\"items\":" + report.items()
                + ",\"failed\":" + report.failed()
                + ",\"failedByReason\":" + reasons
                + ",\"redone\":" + report.redone()
                + ",\"toReprint\":" + report.toReprint()
                + ",\"toMark\":" + report.toMark()
                + ",\"secondsLeft\":" + Decimals.seconds(report.secondsLeft()) + "}";
    }

    static List<String> lines(Extend.Extension extension, Path workingFolder) {
        RunSummary summary = extension.summary();
        String first = String.valueOf(extension.firstPlate());
        String numbers =
                summary.plates() == 1 ? first : first + " to " + (extension.firstPlate() + summary.plates() - 1);
        return List.of(
                field("run", summary.name() + ", extended"),
                field("plates", summary.plates() + " more: " + numbers),
                field("items", summary.items() + " more"),
                field("time", SummaryText.duration(summary.total())),
                field("look first", SummaryText.sheets(summary, workingFolder)));
    }

    static String jsonOfExtension(Outcome<Extend.Extension> outcome) {
        String added = outcome.result()
                .map(one -> "\"section\":" + one.section() + ",\"firstPlate\":" + one.firstPlate() + ",\"plates\":"
                        + one.summary().plates() + ",\"items\":"
                        + one.summary().items() + ",")
                .orElse("");
        return "{" + added + SummaryText.json(outcome.problems()).substring(1);
    }

    private static String reasons(Status.Report report) {
        return report.failures().entrySet().stream()
                .map(entry -> entry.getValue() + " " + (entry.getKey().isEmpty() ? "without a reason" : entry.getKey()))
                .collect(Collectors.joining(", "));
    }

    private static String numbers(Iterable<Integer> numbers) {
        List<String> text = new ArrayList<>();
        numbers.forEach(number -> text.add(Integer.toString(number)));
        return text.isEmpty() ? "none" : (text.size() == 1 ? "item " : "items ") + String.join(", ", text);
    }

    private static String field(String name, String value) {
        return String.format(Locale.ROOT, "%-11s %s", name, value);
    }
}
