package dev.quoin.drawing;

import dev.quoin.problem.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An SVG file, safely loaded. It never changes: whatever is drawn with the values of one row leaves nothing behind for
 * the next. Item coordinates: mm, origin at the page's centre, x right, y up.
 */
public final class SvgDrawing {
    private final SvgElement root;
    private final Frame frame;
    private final Variation variation;

    private final Pictures pictures;

    private SvgDrawing(SvgElement root, Frame frame, Variation variation, Pictures pictures) {
        this.pictures = pictures;
        this.root = root;
        this.frame = frame;
        this.variation = variation;
    }

    /**
     * Reads a drawing that stands alone: nothing but these bytes is read, no DTD, no entity, no style sheet, no picture
     * of another file.
     *
     * @param name what messages call the file
     * @param content the bytes of the file
     * @return nothing if an error was found
     */
    public static Optional<SvgDrawing> read(String name, byte[] content, Problems problems) {
        return read(name, content, ArtFolder.NONE, problems);
    }

    /**
     * The same, with drawings of other files where {@code <image>} shows them. They are asked for when they are drawn.
     *
     * @param art where those are found
     */
    public static Optional<SvgDrawing> read(String name, byte[] content, ArtFolder art, Problems problems) {
        Optional<SvgElement> root = SvgReader.read(name, content, problems);
        Optional<Frame> frame = root.flatMap(svg -> FrameReader.read(svg, problems));
        if (root.isPresent() && frame.isEmpty()) {
            new References(root.get(), Merge.NONE).areBounded(root.get(), problems);
        }
        return frame.flatMap(f -> of(root.get(), f, art, problems));
    }

    static Optional<SvgDrawing> of(SvgElement root, Frame frame, ArtFolder art, Problems problems) {
        References references = new References(root, Merge.NONE);
        return references.areBounded(root, problems)
                ? Optional.of(new SvgDrawing(root, frame, new Variation(root, references), new Pictures(art)))
                : Optional.empty();
    }

    public Page page() {
        return frame.page();
    }

    /** The size of a user unit of the root element, mm. */
    public double millimetresPerUnit() {
        return frame.millimetresPerUnit();
    }

    /** Every element of the file, in its order, drawn or not; its own variable names are left out. */
    public List<Element> elements() {
        List<Element> elements = new ArrayList<>();
        root.forEach(element -> elements.add(Origins.unmerged(element)));
        return List.copyOf(elements);
    }

    /** The attributes with placeholders, in document order, but for {@code data-*}. */
    public List<VariableAttribute> variableAttributes() {
        List<VariableAttribute> variables = new ArrayList<>();
        for (int i = 0; i < variation.attributes().size(); i++) {
            SvgAttribute attribute = variation.attributes().get(i);
            variables.add(new VariableAttribute(
                    Origins.unmerged(variation.owners().get(i)), attribute.name(), attribute.value()));
        }
        return List.copyOf(variables);
    }

    /**
     * Everything that the drawing shows, in paint order; a {@link DrawnVariable} for each outermost element that a
     * variable attribute touches, on it or through a {@code use}. What cannot be marked is an error.
     */
    public List<Drawn> draw(Problems problems) {
        return Renderer.constant(root, frame, variation, pictures, problems);
    }

    /**
     * Draws the variable elements with the values of a row.
     *
     * @param values one for each of {@link #variableAttributes}, in that order, as merged
     * @return what each shows, by {@link DrawnVariable#index}; nothing at all after an error that stops the drawing
     * @throws IllegalArgumentException if there is not one value for each attribute
     */
    public List<List<Drawn>> redraw(List<String> values, Problems problems) {
        Merge merge = Merge.of(variation.attributes(), values);
        if (!new References(root, merge).areBounded(root, problems)) {
            return java.util.Collections.nCopies(variation.size(), List.of());
        }
        return Renderer.anew(root, frame, variation, merge, pictures, problems);
    }
}
