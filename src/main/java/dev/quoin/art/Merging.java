package dev.quoin.art;

import dev.quoin.drawing.Element;
import dev.quoin.order.Item;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** One row on its way into a template: what it says, and what has come of it so far. */
final class Merging {
    private final Columns columns;
    private final RowModel row;
    private final Function<Place, OptionalDouble> limits;
    private final Place rowPlace;
    private final Problems problems;
    private final List<Mark> marks = new ArrayList<>();
    private final List<MarkedText> texts = new ArrayList<>();
    private final List<MarkedCode> codes = new ArrayList<>();
    private final List<SharedSize> sizes = new ArrayList<>();

    /**
     * Begins a merge.
     *
     * @param limits the greatest cap height of a text, by its place in the template
     */
    Merging(Columns columns, Item item, Place rowPlace, Function<Place, OptionalDouble> limits, Problems problems) {
        this.columns = columns;
        this.rowPlace = rowPlace;
        this.limits = limits;
        this.problems = problems;
        this.row = columns.model(item, dates(item.row().cells()));
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

    void add(SharedSize size) {
        sizes.add(size);
    }

    Artwork artwork() {
        return new Artwork(marks, texts, codes, sizes, row.uses());
    }

    /** The greatest cap height of a text that shares its size with others, mm. */
    OptionalDouble limit(Element element) {
        return limits.apply(element.place());
    }

    Problems problems() {
        return problems;
    }

    /** The text for this row; nothing if it has a problem. */
    Optional<String> text(TextSource source, Element element) {
        try {
            return Optional.of(source.merge(row));
        } catch (MergeFailure e) {
            e.column()
                    .ifPresentOrElse(
                            column -> error(column, e.getMessage(), e.remedy()),
                            () -> error(source, element, e.getMessage(), e.remedy()));
            return Optional.empty();
        }
    }

    /** Remembers that line breaks in what a source gives are set as spaces, the text having no more lines. */
    void joinLines(TextSource source, String text) {
        if (text.indexOf('\n') >= 0 || text.indexOf('\r') >= 0) {
            row.joinLines(source.columns());
        }
    }

    /** A problem with what a source gives, at the cell of the first column it uses. */
    void error(TextSource source, Element element, String message, String remedy) {
        if (source.columns().isEmpty()) {
            problems.add(Problem.error(rowPlace, element.describe() + ": " + message, remedy));
        } else {
            error(source.columns().get(0), message, remedy);
        }
    }

    private void error(int column, String message, String remedy) {
        problems.error(rowPlace.at(column + 1), columns.header(column).strip() + ": " + message, remedy);
    }

    /** The dates of the row; one that is none is an error at its cell. */
    private Map<Integer, LocalDate> dates(List<String> cells) {
        Map<Integer, LocalDate> dates = new HashMap<>();
        columns.dates().forEach((column, form) -> {
            String typed = cells.get(column).strip();
            try {
                if (!typed.isEmpty()) {
                    dates.put(column, form.parse(typed));
                }
            } catch (MergeFailure e) {
                error(column, e.getMessage(), e.remedy());
            }
        });
        return dates;
    }
}
