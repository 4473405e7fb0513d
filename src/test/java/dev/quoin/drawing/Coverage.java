package dev.quoin.drawing;

import dev.quoin.browser.Chromium;
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

    /** Four times as many a side: the smoothing of edges, which no two renderers do alike, weighs less. */
    static final int FINE_CELL = 2400;

    /** Larger pictures come out cut off. */
    private static final int WIDEST = 7200;

    private final int cell;
    private final List<BufferedImage> pages = new ArrayList<>();

    private Coverage(int cell) {
        this.cell = cell;
    }

    static Coverage byChromium(List<byte[]> drawings, Path folder) throws IOException, InterruptedException {
        return byChromium(drawings, folder, CELL);
    }

    static Coverage byChromium(List<byte[]> drawings, Path folder, int cell) throws IOException, InterruptedException {
        Coverage coverage = new Coverage(cell);
        for (int i = 0; i < drawings.size(); i += coverage.onAPage()) {
            coverage.pages.add(coverage.page(
                    drawings.subList(i, Math.min(drawings.size(), i + coverage.onAPage())), folder));
        }
        return coverage;
    }

    private int columns() {
        return WIDEST / cell;
    }

    private int onAPage() {
        return (columns() > 3 ? columns() - 2 : columns()) * columns();
    }

    private BufferedImage page(List<byte[]> drawings, Path folder) throws IOException, InterruptedException {
        StringBuilder page = new StringBuilder(
                "<!DOCTYPE html><meta charset='utf-8'><style>body { margin: 0 }" + " img { position: absolute; width: "
                        + cell + "px; height: " + cell + "px; filter: brightness(0) }</style>\n");
        for (int i = 0; i < drawings.size(); i++) {
            Files.write(folder.resolve(i + ".svg"), drawings.get(i));
            int x = i % columns() * cell;
            int y = i / columns() * cell;
            page.append("<img src='" + i + ".svg' style='left:" + x + "px;top:" + y + "px'>\n");
        }
        Path html = Files.writeString(folder.resolve("page.html"), page);
        int rows = (drawings.size() + columns() - 1) / columns();
        return new Chromium(folder).picture(html, columns() * cell, rows * cell);
    }

    /** Our marks, filled and stroked; texts left out. */
    static BufferedImage ours(byte[] svg, Problems problems) {
        return ours(svg, ArtFolder.NONE, problems);
    }

    static BufferedImage ours(byte[] svg, ArtFolder art, Problems problems) {
        return filled(shapes(svg, art, problems));
    }

    /** What its shapes cover, filled and stroked, in item coordinates, mm. */
    static List<Area> shapes(byte[] svg, ArtFolder art, Problems problems) {
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
        return areas;
    }

    /** A picture of areas in item coordinates, mm. */
    static BufferedImage filled(List<Area> areas) {
        return filled(areas, CELL);
    }

    static BufferedImage filled(List<Area> areas, int cell) {
        BufferedImage image = new BufferedImage(cell, cell, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, cell, cell);
        graphics.setColor(Color.BLACK);
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        Affine toPixels = Affine.scale(cell / 200.0, -cell / 200.0).then(Affine.translate(cell / 2.0, cell / 2.0));
        for (Area area : areas) {
            graphics.fill(area.transform(toPixels).outline().toShape(area.rule()));
        }
        graphics.dispose();
        return image;
    }

    /** Intersection over union of the coverage of a drawing, by its number, and another picture. */
    double overlap(int drawing, BufferedImage ours) {
        BufferedImage page = pages.get(drawing / onAPage());
        int left = drawing % onAPage() % columns() * cell;
        int top = drawing % onAPage() / columns() * cell;
        double both = 0;
        double either = 0;
        for (int y = 0; y < cell; y++) {
            for (int x = 0; x < cell; x++) {
                int a = 255 - (page.getRGB(left + x, top + y) & 0xFF);
                int b = 255 - ours.getRaster().getSample(x, y, 0);
                both += Math.min(a, b);
                either += Math.max(a, b);
            }
        }
        return either == 0 ? 1 : both / either;
    }
}
