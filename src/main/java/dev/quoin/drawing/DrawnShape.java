package dev.quoin.drawing;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Area;
import dev.quoin.geometry.Clip;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import java.util.Optional;

/**
 * A shape, painted or not.
 *
 * @param element the element it was drawn from
 * @param local its geometry as the element has it, in user units
 * @param toItem the move from there into item coordinates
 * @param rule the fill rule of its interior
 * @param filled whether its interior is painted
 * @param strokeOutline the area that its stroke covers, in item coordinates, dashes and joins as drawn, cut by the clip;
 *     empty where it has none
 * @param clip the window through which it shows, in item coordinates; empty where it shows whole
 */
public record DrawnShape(
        Element element,
        Path local,
        Affine toItem,
        FillRule rule,
        boolean filled,
        Area strokeOutline,
        Optional<Clip> clip)
        implements Drawn {
    /** A shape that shows whole. */
    public DrawnShape(Element element, Path local, Affine toItem, FillRule rule, boolean filled, Area strokeOutline) {
        this(element, local, toItem, rule, filled, strokeOutline, Optional.empty());
    }

    /** The path itself, whole, in item coordinates. */
    public Path path() {
        return local.transform(toItem);
    }

    /** The part of the path that shows, open where the clip cuts it: what a beam follows. */
    public Path shownPath() {
        return clip.map(window -> window.cut(path())).orElseGet(this::path);
    }

    /** The part of its interior that is painted and shows. */
    public Area interior() {
        Area whole = filled ? new Area(path(), rule) : Area.EMPTY;
        return clip.map(window -> window.cut(whole)).orElse(whole);
    }

    /** The same behind one more window; itself where that cuts nothing off. */
    DrawnShape through(Clip window) {
        boolean isWhole = window.holds(path())
                && (!filled || window.holds(new Area(path(), rule)))
                && (strokeOutline.isEmpty() || window.holds(strokeOutline));
        return isWhole
                ? this
                : new DrawnShape(
                        element,
                        local,
                        toItem,
                        rule,
                        filled,
                        window.cut(strokeOutline),
                        Optional.of(clip.map(window::and).orElse(window)));
    }

    /** The same as part of another drawing: of an element there, moved. */
    DrawnShape in(Element there, Affine move) {
        return new DrawnShape(
                there,
                local,
                toItem.then(move),
                rule,
                filled,
                strokeOutline.transform(move),
                clip.map(window -> window.transform(move)));
    }

    public boolean painted() {
        return filled || !strokeOutline.isEmpty();
    }
}
