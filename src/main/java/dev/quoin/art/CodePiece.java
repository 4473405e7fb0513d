package dev.quoin.art;

import dev.quoin.code.CodeKind;
import dev.quoin.code.CodeMaker;
import dev.quoin.code.CodeResult;
import dev.quoin.code.MadeCode;
import dev.quoin.code.RefusedCode;
import dev.quoin.drawing.Element;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Area;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Recipe;

/**
 * A rectangle that is filled with a code.
 *
 * @param width of the rectangle, mm
 * @param height of the rectangle, mm
 * @param toItem the move from the rectangle's own frame (its centre the origin, mm, y up) into item coordinates
 */
record CodePiece(
        Element element,
        String process,
        CodeKind kind,
        TextSource content,
        double width,
        double height,
        boolean inverted,
        Affine toItem)
        implements Piece {
    @Override
    public void draw(Merging row) {
        row.text(content, element).map(String::strip).ifPresent(value -> draw(value, row));
    }

    @Override
    public void check(Recipe recipe, Problems problems) {
        Piece.checkProcess(process, element.describe(), element.place(), recipe, problems);
    }

    private void draw(String value, Merging row) {
        CodeResult result = CodeMaker.make(kind, value, width, height, inverted);
        if (result instanceof RefusedCode refused) {
            row.error(content, element, refused.message(), refused.remedy());
        } else if (result instanceof MadeCode made) {
            Area area = made.area().transform(toItem);
            row.add(new Mark(process, area.outline(), area));
            row.add(new MarkedCode(
                    kind, made.encoded(), made.moduleMm(), area.outline().bounds()));
        }
    }
}
