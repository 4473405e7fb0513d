package dev.quoin.lettering;

import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;

/** Draws runs of glyphs one after the other into a line, ems. */
final class LineDrawing {
    private final Path.Builder outline = Path.builder();
    private Box ink = Box.EMPTY;
    private double pen;

    void draw(GlyphRun run) {
        for (GlyphRun.Glyph glyph : run.glyphs()) {
            if (!glyph.missing() && !glyph.outline().isEmpty()) {
                double x = pen + glyph.x();
                outline.append(glyph.outline(), x, glyph.y());
                Box box = glyph.ink();
                ink = ink.include(box.minX() + x, box.minY() + glyph.y())
                        .include(box.maxX() + x, box.maxY() + glyph.y());
            }
        }
        pen += run.advance();
    }

    TypesetText drawn(FontSet fonts) {
        return new TypesetText(outline.build(), pen, ink, fonts.capHeight(), fonts.strokes());
    }
}
