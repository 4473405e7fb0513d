package dev.quoin.drawing;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Area;
import dev.quoin.problem.Problems;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** What drawings whose longer side is 200 mm cover: as Chromium paints them, and as we mark them. */
final class Coverage {
    /** Pixels of a picture; three to a millimetre, so that a line of one is three pixels wide. */
    private static final int CELL = 600;

    private static final int COLUMNS = 12;

    /** Larger pictures come out cut off. */
    private static final int ON_A_PAGE = 10 * COLUMNS;

    private final List<BufferedImage> pages;

    private Coverage(List<BufferedImage> pages) {
        this.pages = pages;
    }

    static Coverage byChromium(List<byte[]> drawings, Path folder) throws IOException, InterruptedException {
        List<BufferedImage> pages = new ArrayList<>();
        for (int i = 0; i < drawings.size(); i += ON_A_PAGE) {
            pages.add(page(drawings.subList(i, Math.min(drawings.size(), i + ON_A_PAGE)), folder));
        }
        return new Coverage(pages);
    }

    private static BufferedImage page(List<byte[]> drawings, Path folder) throws IOException, InterruptedException {
        StringBuilder page = new StringBuilder(
                "<!DOCTYPE html><meta charset='utf-8'><style>body { margin: 0 }" + " img { position: absolute; width: "
                        + CELL + "px; height: " + CELL + "px; filter: brightness(0) }</style>\n");
        for (int i = 0; i < drawings.size(); i++) {
            Files.write(folder.resolve(i + ".svg"), drawings.get(i));
            int x = i % COLUMNS * CELL;
            int y = i / COLUMNS * CELL;
            page.append("<img src='" + i + ".svg' style='left:" + x + "px;top:" + y + "px'>\n");
        }
        Path html = Files.writeString(folder.resolve("page.html"), page);
        int rows = (drawings.size() + COLUMNS - 1) / COLUMNS;
        return Chromium.screenshot(html, folder, COLUMNS * CELL, rows * CELL);
    }

    /** Our marks, filled and stroked; texts left out. */
    static BufferedImage ours(byte[] svg, Problems problems) {
        return ours(svg, ArtFolder.NONE, problems);
    }

    static BufferedImage ours(byte[] svg, ArtFolder art, Problems problems) {
        List<Drawn> drawn = SvgDrawing.read("t.svg", svg, art, problems)
                .map(drawing -> drawing.draw(problems))
                .orElse(List.of());
        List<Area> areas = new ArrayList<>();
        for (Drawn each : drawn) {
            if (each instanceof DrawnShape shape) {
                areas.add(shape.interior());
                areas.add(shape.strokeOutline());
            }
        }
        return filled(areas);
    }

    /** A picture of areas in item coordinates, mm. */
    static BufferedImage filled(List<Area> areas) {
        BufferedImage image = new BufferedImage(CELL, CELL, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, CELL, CELL);
        graphics.setColor(Color.BLACK);
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        Affine toPixels = Affine.scale(CELL / 200.0, -CELL / 200.0).then(Affine.translate(CELL / 2.0, CELL / 2.0));
        for (Area area : areas) {
            graphics.fill(area.transform(toPixels).outline().toShape(area.rule()));
        }
        graphics.dispose();
        return image;
    }

    /** Intersection over union of the coverage of a drawing, by its number, and another picture. */
    double overlap(int drawing, BufferedImage ours) {
        BufferedImage page = pages.get(drawing / ON_A_PAGE);
        int cell = drawing % ON_A_PAGE;
        double both = 0;
        double either = 0;
        for (int y = 0; y < CELL; y++) {
            for (int x = 0; x < CELL; x++) {
                int a = 255 - (page.getRGB(cell % COLUMNS * CELL + x, cell / COLUMNS * CELL + y) & 0xFF);
                int b = 255 - ours.getRaster().getSample(x, y, 0);
                both += Math.min(a, b);
                either += Math.max(a, b);
            }
        }
        return either == 0 ? 1 : both / either;
    }
}
