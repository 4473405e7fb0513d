package dev.quoin.format;

import dev.quoin.art.Mark;
import dev.quoin.drawing.SvgWriter;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.FillRule;
import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.StepColour;
import dev.quoin.shop.Method;
import dev.quoin.shop.Step;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/**
 * A plate as SVG: groups and paths only, one path a mark, no transforms, curves kept. Its page is the field, the page's
 * centre the field's centre. Areas of fill steps are painted by fill, paths of follow steps by stroke, each step in its
 * own colour. In a hatched run the lines that fill an area stand in its place: a path for each pass, its pieces in the order
 * of travel.
 */
public final class PlateSvg implements PlateFormat {
    /** The stroke of followed paths, mm: thin, and visible at any zoom. */
    private static final String LINE = "0.05";

    /** Item numbers are filled up to so many digits. */
    private static final int ITEM_DIGITS = 4;

    private final double field;
    private final boolean hatched;

    /**
     * Plates for a field.
     *
     * @param field its side, mm
     */
    public PlateSvg(double field) {
        this(field, false);
    }

    /**
     * Plates of either kind.
     *
     * @param field its side, mm
     * @param hatched whether the marks of fill steps are the lines of a hatch, a path a pass, and not areas
     */
    public PlateSvg(double field, boolean hatched) {
        this.field = field;
        this.hatched = hatched;
    }

    @Override
    public void write(OutputStream out, List<Step> steps, List<LoadedItem> items) throws IOException {
        SvgWriter svg = new SvgWriter(out);
        svg.start(field, field);
        for (Step step : steps) {
            svg.group(step.id());
            for (LoadedItem item : items) {
                write(svg, step, item);
            }
            svg.endGroup();
        }
        svg.end();
    }

    private void write(SvgWriter svg, Step step, LoadedItem item) throws IOException {
        Affine toPage = item.placement().pose().then(new Affine(1, 0, 0, -1, field / 2, field / 2));
        String number = Integer.toString(item.item());
        String zeros = "0".repeat(Math.max(0, ITEM_DIGITS - number.length()));
        svg.group("step-" + step.number() + "-item-" + zeros + number);
        for (Mark mark : item.marks(step)) {
            write(svg, step, mark, toPage);
        }
        svg.endGroup();
    }

    private void write(SvgWriter svg, Step step, Mark mark, Affine toPage) throws IOException {
        String colour = StepColour.of(step.number()).hex();
        if (hatched || step.method() == Method.FOLLOW) {
            svg.path(mark.path(), toPage, "fill", "none", "stroke", colour, "stroke-width", LINE);
        } else if (mark.area().rule() == FillRule.EVEN_ODD) {
            svg.path(mark.area().outline(), toPage, "fill", colour, "fill-rule", "evenodd");
        } else {
            svg.path(mark.area().outline(), toPage, "fill", colour);
        }
    }
}
