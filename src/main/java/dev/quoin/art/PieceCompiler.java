package dev.quoin.art;

import dev.quoin.drawing.Drawn;
import dev.quoin.drawing.DrawnShape;
import dev.quoin.drawing.DrawnText;
import dev.quoin.drawing.DrawnVariable;
import dev.quoin.drawing.Element;
import dev.quoin.drawing.SvgDrawing;
import dev.quoin.geometry.Area;
import dev.quoin.geometry.Path;
import dev.quoin.lettering.FontLibrary;
import dev.quoin.problem.Problems;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Turns what a drawing shows into the pieces of a template. */
final class PieceCompiler {
    private final ProcessFinder processes;
    private final Expressions expressions;
    private final LetteringCompiler lettering;
    private final CodeCompiler codes;
    private final Redrawing redrawing;
    private Map<String, Path> constantShapes = Map.of();

    PieceCompiler(
            ProcessFinder processes,
            FontLibrary fonts,
            Expressions expressions,
            SvgDrawing drawing,
            Problems problems) {
        this.processes = processes;
        this.expressions = expressions;
        this.lettering = new LetteringCompiler(fonts, expressions);
        this.codes = new CodeCompiler(expressions);
        this.redrawing = new Redrawing(drawing, expressions, this, problems);
    }

    /** The pieces of the whole drawing, in paint order. What is not to be marked gives none. */
    List<Piece> compileAll(List<Drawn> drawn, Problems problems) {
        constantShapes = shapes(drawn);
        return compile(drawn, problems);
    }

    /** The pieces of a part that is drawn anew; it may refer to constant shapes. */
    List<Piece> compile(List<Drawn> drawn, Problems problems) {
        Map<String, Path> shapes = new LinkedHashMap<>(constantShapes);
        shapes.putAll(shapes(drawn));
        List<Piece> pieces = new ArrayList<>();
        for (Drawn one : drawn) {
            if (one instanceof DrawnShape shape) {
                compile(shape, problems)
                        .map(piece -> when(shape.element(), piece, problems))
                        .ifPresent(pieces::add);
            } else if (one instanceof DrawnText text) {
                compile(text, shapes, problems)
                        .map(piece -> when(text.element(), piece, problems))
                        .ifPresent(pieces::add);
            } else if (one instanceof DrawnVariable variable) {
                pieces.add(new RedrawnPiece(redrawing, variable.index()));
            }
        }
        return pieces;
    }

    private static Map<String, Path> shapes(List<Drawn> drawn) {
        Map<String, Path> shapes = new LinkedHashMap<>();
        for (Drawn one : drawn) {
            if (one instanceof DrawnShape shape && !shape.element().id().isEmpty()) {
                shapes.put(shape.element().id(), shape.path());
            }
        }
        return shapes;
    }

    private Optional<Piece> compile(DrawnShape shape, Problems problems) {
        Element element = shape.element();
        String process = processes.find(element, problems);
        if (process.equals(ProcessFinder.GUIDE)) {
            return Optional.empty();
        }
        if (element.data("code").isPresent()) {
            return codes.compile(shape, process, problems);
        }
        if (!shape.painted()) {
            return Optional.empty();
        }
        Area area = Painted.area(shape.interior(), shape.strokeOutline());
        Mark mark = new Mark(process, shape.shownPath(), area, true);
        boolean isCutAway = mark.path().isEmpty() && area.isEmpty();
        return isCutAway ? Optional.empty() : Optional.of(new FixedPiece(element, mark));
    }

    private Optional<Piece> compile(DrawnText text, Map<String, Path> shapes, Problems problems) {
        String process = processes.find(text.element(), problems);
        if (process.equals(ProcessFinder.GUIDE) || !text.painted()) {
            return Optional.empty();
        }
        TextFrame frame = TextFrame.of(text.toItem());
        return lettering
                .compile(text, frame, shapes, problems)
                .map(letters -> new TextPiece(
                        text.element(),
                        process,
                        letters,
                        text.filled(),
                        text.strokeWidth() * frame.scale(),
                        frame.toItem(),
                        text.clip()));
    }

    /** The piece under its own condition, and under those of the groups around it, the outermost asked first. */
    private Piece when(Element element, Piece piece, Problems problems) {
        Piece held = piece;
        List<Element> conditions = new ArrayList<>(List.of(element));
        conditions.addAll(element.conditions());
        for (Element one : conditions) {
            if (one.data("when").isPresent()) {
                TextSource condition = expressions.compile(one.data("when").get(), one.place(), problems);
                held = new ConditionalPiece(one, condition, held);
            }
        }
        return held;
    }
}
