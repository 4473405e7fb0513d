package dev.quoin.art;

import dev.quoin.code.CodeKind;
import dev.quoin.drawing.DrawnShape;
import dev.quoin.drawing.Element;
import dev.quoin.drawing.VariableText;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Point;
import dev.quoin.problem.Problems;
import java.util.List;
import java.util.Optional;

/** Compiles rectangles with {@code data-code}. */
record CodeCompiler(Expressions expressions) {
    /** The code of a rectangle; nothing if it has errors. */
    Optional<Piece> compile(DrawnShape shape, String process, Problems problems) {
        Element element = shape.element();
        DataAttributes data = new DataAttributes(element, problems);
        Optional<CodeKind> kind = data.word("code", CodeKind.words()).flatMap(CodeKind::of);
        Optional<String> inverted = data.word("invert", List.of("true", "false"));
        Optional<VariableText> content = element.data("content");
        if (!element.tag().equals("rect")) {
            problems.error(element.place(), element.describe() + ": a code fills a rectangle", "use a <rect>");
        } else if (shape.clip().isPresent() && !shape.clip().get().holds(shape.path())) {
            problems.error(
                    element.place(),
                    element.describe() + ": the code is cut off by a clip path, and could not be read",
                    "take it out of the clip");
        } else if (content.isEmpty()) {
            problems.error(element.place(), element.describe() + ": the code has no data-content", "say what it holds");
        } else if (kind.isPresent()) {
            TextSource source = expressions.compile(content.get(), element.place(), problems);
            return Optional.of(piece(
                    shape,
                    process,
                    kind.get(),
                    source,
                    inverted.filter("true"::equals).isPresent()));
        }
        return Optional.empty();
    }

    private static Piece piece(DrawnShape shape, String process, CodeKind kind, TextSource content, boolean inverted) {
        TextFrame frame = TextFrame.of(shape.toItem());
        Box box = shape.path().transform(frame.toItem().inverse()).bounds();
        Point centre = box.centre();
        Affine toItem = Affine.translate(centre.x(), centre.y()).then(frame.toItem());
        return new CodePiece(shape.element(), process, kind, content, box.width(), box.height(), inverted, toItem);
    }
}
