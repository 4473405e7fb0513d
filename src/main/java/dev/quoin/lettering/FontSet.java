package dev.quoin.lettering;

import java.util.List;

/**
 * The fonts in which a text is set: each character in the first that has it. Either all of outlines or all of strokes.
 * Equal sets hold the same fonts of the same library.
 */
public final class FontSet {
    private final List<FontFace> faces;

    FontSet(List<FontFace> faces) {
        this.faces = List.copyOf(faces);
    }

    /** The families, in the order in which they are tried. */
    public List<String> families() {
        return faces.stream().map(FontFace::family).toList();
    }

    /** Whether letters are open strokes, for {@code follow} steps only, rather than outlines. */
    public boolean strokes() {
        return first().strokes();
    }

    /** The height of the first font's capitals, ems. */
    public double capHeight() {
        return first().capHeight();
    }

    Typeface first() {
        return faces.get(0).typeface();
    }

    List<FontFace> faces() {
        return faces;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof FontSet set && faces.equals(set.faces);
    }

    @Override
    public int hashCode() {
        return faces.hashCode();
    }

    @Override
    public String toString() {
        return String.join(", ", families());
    }
}
