package dev.quoin.art;

import dev.quoin.drawing.Element;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Area;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Method;
import dev.quoin.shop.Recipe;

/**
 * A text.
 *
 * @param lettering its layout, in the text's frame
 * @param filled whether its letters are painted
 * @param strokeWidth of its letters' outlines, mm; 0 where they have none
 * @param toItem the move from the text's frame into item coordinates
 */
record TextPiece(
        Element element, String process, Lettering lettering, boolean filled, double strokeWidth, Affine toItem)
        implements Piece {
    @Override
    public void draw(Merging row) {
        lettering.set(row, element).ifPresent(lettered -> {
            row.add(lettered.text());
            if (!lettered.outline().isEmpty()) {
                row.add(mark(lettered.outline()));
            }
        });
    }

    @Override
    public void check(Recipe recipe, Problems problems) {
        Piece.checkProcess(process, element.describe(), element.place(), recipe, problems);
        boolean isFilled = recipe.steps().stream()
                .anyMatch(step -> step.process().equals(process) && step.method() == Method.FILL);
        if (lettering.strokes() && isFilled) {
            problems.error(
                    element.place(),
                    element.describe() + " is set in a font of single strokes, and the recipe " + recipe.name()
                            + " fills '" + process + "'",
                    "choose a font of outlines, or a process that the recipe follows");
        }
    }

    private Mark mark(Path outline) {
        Path path = outline.transform(toItem);
        if (lettering.strokes()) {
            return new Mark(process, path, Area.EMPTY);
        }
        Area letters = filled ? new Area(path, FillRule.NON_ZERO) : Area.EMPTY;
        return new Mark(process, path, Painted.area(letters, Painted.stroke(outline, strokeWidth, toItem)));
    }
}
