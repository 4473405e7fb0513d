package dev.quoin.art;

import dev.quoin.drawing.Element;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Area;
import dev.quoin.geometry.Clip;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Method;
import dev.quoin.shop.Recipe;
import java.util.Optional;

/**
 * A text.
 *
 * @param lettering its layout, in the text's frame
 * @param filled whether its letters are painted
 * @param strokeWidth of its letters' outlines, mm; 0 where they have none
 * @param toItem the move from the text's frame into item coordinates
 * @param clip the window that all of it must show through, in item coordinates
 */
record TextPiece(
        Element element,
        String process,
        Lettering lettering,
        boolean filled,
        double strokeWidth,
        Affine toItem,
        Optional<Clip> clip)
        implements Piece {
    @Override
    public void draw(Merging row) {
        lettering.set(row, element).ifPresent(lettered -> {
            row.add(lettered.text());
            if (!lettered.outline().isEmpty()) {
                Mark mark = mark(lettered.outline());
                row.add(mark);
                checkClip(mark, row);
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

    /** Half a name is never meant. */
    private void checkClip(Mark mark, Merging row) {
        boolean isWhole = clip.isEmpty()
                || (clip.get().holds(mark.path())
                        && clip.get().holds(mark.area().outline()));
        if (!isWhole) {
            row.error(
                    lettering.source(),
                    element,
                    element.describe() + " is cut off by a clip path, or at the edge of the drawing it stands in",
                    "move it inside, take it out of the clip, or shorten it");
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
