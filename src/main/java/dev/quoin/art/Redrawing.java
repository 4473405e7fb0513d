package dev.quoin.art;

import dev.quoin.drawing.Drawn;
import dev.quoin.drawing.Element;
import dev.quoin.drawing.SvgDrawing;
import dev.quoin.drawing.VariableAttribute;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Draws anew what attributes with placeholders touch. The last sets of values are remembered: orders repeat them. */
final class Redrawing {
    private static final int MOST_REMEMBERED = 500;

    private final SvgDrawing drawing;
    private final PieceCompiler compiler;
    private final List<VariableAttribute> attributes;
    private final List<TextSource> sources = new ArrayList<>();
    private final Map<List<String>, Redrawn> remembered = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<List<String>, Redrawn> eldest) {
            return size() > MOST_REMEMBERED;
        }
    };

    Redrawing(SvgDrawing drawing, Expressions expressions, PieceCompiler compiler, Problems problems) {
        this.drawing = drawing;
        this.compiler = compiler;
        this.attributes = drawing.variableAttributes();
        for (VariableAttribute attribute : attributes) {
            Place place = attribute.element().place();
            boolean isStyle = attribute.name().equals("style");
            sources.add(
                    isStyle
                            ? expressions.compileStyle(attribute.value(), place, problems)
                            : expressions.compile(attribute.value(), place, problems));
        }
    }

    /** The pieces of what is drawn anew at {@code index}, for a row; none if it has a problem. */
    List<Piece> pieces(Merging row, int index) {
        List<String> values = new ArrayList<>();
        for (int i = 0; i < sources.size(); i++) {
            Optional<String> value = row.text(sources.get(i), attributes.get(i).element());
            if (value.isEmpty()) {
                return List.of();
            }
            values.add(value.get());
        }
        Redrawn redrawn = redrawn(values);
        redrawn.problems().forEach(problem -> tell(problem, values, row));
        return redrawn.pieces().isEmpty() ? List.of() : redrawn.pieces().get(index);
    }

    /** One thread at a time: the drawing is changed to be drawn anew. */
    private synchronized Redrawn redrawn(List<String> values) {
        return remembered.computeIfAbsent(values, this::redraw);
    }

    /** An error that quotes what a row's value makes of an attribute is the row's; others are the template's. */
    private void tell(Problem problem, List<String> values, Merging row) {
        for (int i = 0; i < values.size(); i++) {
            Element element = attributes.get(i).element();
            if (problem.isError()
                    && element.place().equals(problem.place())
                    && problem.message().contains('"' + values.get(i) + '"')) {
                row.error(sources.get(i), element, problem.message() + " (" + problem.place() + ")", problem.remedy());
                return;
            }
        }
        row.problems().add(problem);
    }

    private Redrawn redraw(List<String> values) {
        Problems problems = new Problems();
        List<List<Piece>> pieces = new ArrayList<>();
        for (List<Drawn> drawn : drawing.redraw(values, problems)) {
            pieces.add(compiler.compile(drawn, problems));
        }
        return new Redrawn(pieces, problems.sorted());
    }

    private record Redrawn(List<List<Piece>> pieces, List<Problem> problems) {}
}
