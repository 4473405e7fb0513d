package dev.quoin.lettering;

import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import java.util.ArrayList;
import java.util.List;

/** Draws runs of glyphs one after the other into a line, ems. */
final class LineDrawing {
    private final Path.Builder outline = Path.builder(0, 0);
    private Box ink = Box.EMPTY;
    private double pen;

    private LineDrawing() {}

    /** The line of these runs, from left to right. */
    static TypesetText of(List<GlyphRun> runs, FontSet fonts) {
        LineDrawing line = new LineDrawing();
        List<Path> shown = new ArrayList<>();
        for (GlyphRun run : runs) {
            for (GlyphRun.Glyph glyph : run.glyphs()) {
                if (isShown(glyph)) {
                    shown.add(glyph.outline());
                }
            }
        }
        line.outline.reserve(shown);
        runs.forEach(line::draw);
        return new TypesetText(line.outline.build(), line.pen, line.ink, fonts.capHeight(), fonts.strokes());
    }

    private static boolean isShown(GlyphRun.Glyph glyph) {
        return !glyph.missing() && !glyph.outline().isEmpty();
    }

    private void draw(GlyphRun run) {
        for (GlyphRun.Glyph glyph : run.glyphs()) {
            if (isShown(glyph)) {
                double x = pen + glyph.x();
                outline.append(glyph.outline(), x, glyph.y());
                Box box = glyph.ink();
                ink = ink.include(box.minX() + x, box.minY() + glyph.y())
                        .include(box.maxX() + x, box.maxY() + glyph.y());
            }
        }
        pen += run.advance();
    }
}
