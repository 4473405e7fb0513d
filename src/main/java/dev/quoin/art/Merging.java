package dev.quoin.art;

import dev.quoin.drawing.Element;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One row on its way into a template: what it says, and what has come of it so far. */
final class Merging {
    private final Columns columns;
    private final RowModel row;
    private final Place rowPlace;
    private final Problems problems;
    private final List<Mark> marks = new ArrayList<>();
    private final List<MarkedText> texts = new ArrayList<>();
    private final List<MarkedCode> codes = new ArrayList<>();

    Merging(Columns columns, List<String> cells, Place rowPlace, Problems problems) {
        this.columns = columns;
        this.row = columns.model(cells);
        this.rowPlace = rowPlace;
        this.problems = problems;
    }

    void add(Mark mark) {
        marks.add(mark);
    }

    void add(MarkedText text) {
        texts.add(text);
    }

    void add(MarkedCode code) {
        codes.add(code);
    }

    Artwork artwork() {
        return new Artwork(marks, texts, codes);
    }

    Problems problems() {
        return problems;
    }

    /** The text for this row; nothing if it has a problem. */
    Optional<String> text(TextSource source, Element element) {
        try {
            return Optional.of(source.merge(row));
        } catch (MergeFailure e) {
            error(source, element, e.getMessage(), e.remedy());
            return Optional.empty();
        }
    }

    /** A problem with what a source gives, at the cell of the first column it uses. */
    void error(TextSource source, Element element, String message, String remedy) {
        if (source.columns().isEmpty()) {
            problems.add(Problem.error(rowPlace, element.describe() + ": " + message, remedy));
        } else {
            int column = source.columns().get(0);
            problems.add(Problem.error(
                    rowPlace.at(column + 1), columns.header(column).strip() + ": " + message, remedy));
        }
    }
}
