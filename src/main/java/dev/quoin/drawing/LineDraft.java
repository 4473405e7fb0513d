package dev.quoin.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A line of text while its runs are gathered. */
final class LineDraft {
    private record Raw(TextStyle style, VariableText content, boolean preserve) {}

    private final List<Raw> raw = new ArrayList<>();
    private double x;
    private double y;

    LineDraft(double x, double y) {
        this.x = x;
        this.y = y;
    }

    double x() {
        return x;
    }

    double y() {
        return y;
    }

    void moveTo(double newX, double newY) {
        x = newX;
        y = newY;
    }

    void add(TextStyle style, VariableText content, boolean preserve) {
        raw.add(new Raw(style, content, preserve));
    }

    /** Whether nothing but white space stands on it. */
    boolean isBlank() {
        return raw.stream().allMatch(run -> WhiteSpace.isBlank(run.content()));
    }

    /** The line; nothing if it is blank. */
    Optional<TextLine> line() {
        if (isBlank()) {
            return Optional.empty();
        }
        List<TextRun> runs = new ArrayList<>();
        WhiteSpace space = new WhiteSpace();
        for (Raw run : raw) {
            append(
                    runs,
                    new TextRun(run.style().font(), run.style().size(), space.next(run.content(), run.preserve())));
        }
        if (!raw.get(raw.size() - 1).preserve()) {
            trimEnd(runs);
        }
        return Optional.of(new TextLine(x, y, anchor(), List.copyOf(runs)));
    }

    /** The anchor of the line's first letter decides (SVG 1.1, section 10.9.1). */
    private TextAnchor anchor() {
        return raw.stream()
                .filter(run -> !WhiteSpace.isBlank(run.content()))
                .findFirst()
                .map(run -> run.style().anchor())
                .orElse(TextAnchor.START);
    }

    private static void append(List<TextRun> runs, TextRun run) {
        if (run.content().parts().isEmpty()) {
            return;
        }
        int last = runs.size() - 1;
        if (last >= 0
                && runs.get(last).font().equals(run.font())
                && runs.get(last).size() == run.size()) {
            VariableText both = WhiteSpace.joined(runs.get(last).content(), run.content());
            runs.set(last, new TextRun(run.font(), run.size(), both));
        } else {
            runs.add(run);
        }
    }

    private static void trimEnd(List<TextRun> runs) {
        while (!runs.isEmpty()) {
            TextRun last = runs.remove(runs.size() - 1);
            VariableText content = WhiteSpace.trimmed(last.content());
            if (!content.parts().isEmpty()) {
                runs.add(new TextRun(last.font(), last.size(), content));
                return;
            }
        }
    }
}
