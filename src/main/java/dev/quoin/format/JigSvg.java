package dev.quoin.format;

import dev.quoin.drawing.SvgWriter;
import dev.quoin.drawing.TextAnchor;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Path;
import dev.quoin.lettering.FontSet;
import dev.quoin.lettering.TypesetText;
import dev.quoin.lettering.Typesetter;
import dev.quoin.shop.JigDesign;
import dev.quoin.shop.Pin;
import dev.quoin.shop.PocketShape;
import dev.quoin.shop.Slot;
import java.io.IOException;
import java.io.OutputStream;

/**
 * A jig as a drawing that can itself be cut, and that is read as a jig: labels to engrave, then pockets, holes for pins and
 * the plate's outline to cut, in this order, so that nothing is loose before its turn. Its page is the plate.
 */
public final class JigSvg {
    /** The lowest capitals that are worth engraving, and the highest that are needed, mm. */
    private static final double LOWEST = 0.8;

    private static final double HIGHEST = 4;
    private static final String[] LINE = {"fill", "none", "stroke", "#000000", "stroke-width", "0.1"};

    private final FontSet font;

    public JigSvg(FontSet font) {
        this.font = font;
    }

    /** Whether there is room between the pockets for their labels. */
    public static boolean hasLabels(JigDesign design) {
        return capitals(design) >= LOWEST;
    }

    public void write(OutputStream out, JigDesign design) throws IOException {
        Affine toPage = new Affine(1, 0, 0, -1, design.width() / 2, design.height() / 2);
        SvgWriter svg = new SvgWriter(out).start(design.width(), design.height());
        if (hasLabels(design)) {
            svg.group("labels", "class", "engrave");
            for (Slot slot : design.slots()) {
                svg.path(label(slot, design), toPage, "fill", "#000000");
            }
            svg.endGroup();
        }
        svg.group("pockets", LINE);
        for (Slot slot : design.slots()) {
            Affine move = Affine.translate(slot.centre().x(), slot.centre().y()).then(toPage);
            svg.path(slot.pocket(), move, "id", slot.id(), "class", "pocket cut");
        }
        svg.endGroup();
        svg.group("plate", LINE);
        for (Pin pin : design.pins()) {
            Path hole = new PocketShape(true, pin.diameter(), pin.diameter(), 0).outline();
            svg.path(hole, Affine.translate(pin.x(), pin.y()).then(toPage), "class", "cut");
        }
        svg.path(Path.of(design.plate()), toPage, "class", "cut");
        svg.endGroup();
        svg.end();
    }

    /** Below its pocket, in the middle of the bar that is left there. */
    private Path label(Slot slot, JigDesign design) {
        double size = capitals(design) / font.capHeight();
        double baseline = slot.centre().y() - slot.height() / 2 - bar(design) / 2 - capitals(design) / 2;
        if (new Typesetter().set(slot.id(), font) instanceof TypesetText text) {
            return text.at(slot.centre().x(), baseline, TextAnchor.MIDDLE, size);
        }
        return Path.EMPTY;
    }

    private static double capitals(JigDesign design) {
        return Math.min(HIGHEST, bar(design) / 2);
    }

    /** What is left between two rows, or below the last; mm. */
    private static double bar(JigDesign design) {
        double between = design.pitchY() - design.pocket().height();
        return design.rows() > 1 ? Math.min(between, design.margin()) : design.margin();
    }
}
