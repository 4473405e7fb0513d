package dev.quoin.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.quoin.geometry.Affine;
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
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The shapes of a public test suite: our marks cover what Chromium paints. Source: github linebender/resvg, commit
 * 08c79a31, test folders (Apache-2.0 OR MIT). The files have no real size, so each is given one.
 */
@Tag("browser")
class SvgSuiteTest {
    /** Pixels of a picture; the files are 200 units wide, so that a line of one unit is three pixels wide. */
    private static final int CELL = 600;

    private static final int COLUMNS = 12;
    private static final double LEAST_OVERLAP = 0.99;

    /** Where we differ on purpose: we say what is wrong and draw nothing of it, since half a shape spoils a blank. */
    private static final Map<String, String> DIFFERENCES = new TreeMap<>(Map.ofEntries(
            Map.entry("ellipse/negative-rx-attribute", "a size below 0 is an error"),
            Map.entry("ellipse/negative-ry-attribute", "a size below 0 is an error"),
            Map.entry("ellipse/percent-values-missing-ry", "one radius in per cent is an error: both must be written"),
            Map.entry("path/invalid-data-in-L", "bad path data is an error; a browser draws up to it"),
            Map.entry("path/invalid-transform", "a bad transform is an error; a browser leaves it out"),
            Map.entry("path/missing-coordinate-in-L", "bad path data is an error; a browser draws up to it"),
            Map.entry("polyline/ignore-odd-points", "half a point is an error; a browser leaves it out"),
            Map.entry("rect/ch-values", "a unit of CSS 3 that depends on a font is an error"),
            Map.entry("rect/ex-values", "no font is loaded: ex is half an em (CSS 2.1, section 4.3.2)"),
            Map.entry("rect/ic-values", "a unit of CSS 4 that depends on a font is an error"),
            Map.entry("rect/invalid-coordinates", "a bad coordinate is an error; a browser takes 0"),
            Map.entry("rect/lh-values", "a unit of CSS 4 that depends on a font is an error"),
            Map.entry("rect/percentage-values-1", "one radius in per cent is an error: both must be written"),
            Map.entry("rect/percentage-values-2", "one radius in per cent is an error: both must be written"),
            Map.entry("rect/q-values", "quarter millimetres are an error"),
            Map.entry("rect/rem-values", "a unit of CSS 3 that depends on a font is an error"),
            Map.entry("rect/rlh-values", "a unit of CSS 4 that depends on a font is an error"),
            Map.entry("rect/vi-and-vb-values", "a unit that depends on a window is an error"),
            Map.entry("rect/vmin-and-vmax-values", "a unit that depends on a window is an error"),
            Map.entry("rect/vw-and-vh-values", "a unit that depends on a window is an error")));

    @TempDir
    private Path folder;

    @Test
    void ourMarksCoverWhatChromiumPaints() throws IOException, InterruptedException {
        String cases = System.getProperty("quoin.cases", "");
        Path suite = Path.of(cases, "svg-suite", "shapes");
        assumeTrue(!cases.isEmpty() && Files.isDirectory(suite), "skipped: no svg-suite under quoin.cases");
        List<Path> files;
        try (Stream<Path> all = Files.walk(suite)) {
            files = all.filter(file -> file.toString().endsWith(".svg"))
                    .sorted()
                    .toList();
        }
        BufferedImage picture = chromium(files);
        List<String> failures = new ArrayList<>();
        List<String> different = new ArrayList<>();
        for (int i = 0; i < files.size(); i++) {
            String name = suite.relativize(files.get(i)).toString().replace(".svg", "");
            Problems problems = new Problems();
            double overlap = overlap(picture, i, ours(files.get(i), problems));
            if (overlap < LEAST_OVERLAP) {
                different.add(name);
                assertTrue(problems.hasErrors() || name.equals("rect/ex-values"), name + " differs without a word");
            }
            if (overlap < LEAST_OVERLAP && !DIFFERENCES.containsKey(name)) {
                failures.add(name + " overlaps by " + overlap + " " + problems.sorted());
            }
        }
        assertEquals(List.of(), failures);
        assertTrue(files.size() > 130, files.size() + " files");
        assertEquals(List.copyOf(DIFFERENCES.keySet()), different, "the differences listed are those that are");
    }

    private BufferedImage chromium(List<Path> files) throws IOException, InterruptedException {
        StringBuilder page = new StringBuilder(
                "<!DOCTYPE html><meta charset='utf-8'><style>body { margin: 0 }" + " img { position: absolute; width: "
                        + CELL + "px; height: " + CELL + "px; filter: brightness(0) }</style>\n");
        for (int i = 0; i < files.size(); i++) {
            Files.writeString(folder.resolve(i + ".svg"), sized(Files.readString(files.get(i))));
            int x = i % COLUMNS * CELL;
            int y = i / COLUMNS * CELL;
            page.append("<img src='" + i + ".svg' style='left:" + x + "px;top:" + y + "px'>\n");
        }
        Path html = Files.writeString(folder.resolve("page.html"), page);
        int rows = (files.size() + COLUMNS - 1) / COLUMNS;
        return Chromium.screenshot(html, folder, COLUMNS * CELL, rows * CELL);
    }

    private static String sized(String svg) {
        String root = svg.substring(svg.indexOf("<svg"), svg.indexOf('>', svg.indexOf("<svg")));
        String plain = root.replaceAll("\\s(width|height)=\"[^\"]*\"", "");
        String height = root.contains("0 0 200 100") ? "100mm" : "200mm";
        return svg.replace(root, plain + " width=\"200mm\" height=\"" + height + "\"");
    }

    private static BufferedImage ours(Path file, Problems problems) throws IOException {
        BufferedImage image = new BufferedImage(CELL, CELL, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, CELL, CELL);
        graphics.setColor(Color.BLACK);
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        Affine toPixels = Affine.scale(CELL / 200.0, -CELL / 200.0).then(Affine.translate(CELL / 2.0, CELL / 2.0));
        byte[] svg = Svg.bytes(sized(Files.readString(file)));
        List<Drawn> drawn = SvgDrawing.read(file.getFileName().toString(), svg, problems)
                .map(drawing -> drawing.draw(problems))
                .orElse(List.of());
        for (Drawn each : drawn) {
            if (each instanceof DrawnShape shape) {
                if (shape.filled()) {
                    graphics.fill(shape.path().transform(toPixels).toShape(shape.rule()));
                }
                graphics.fill(shape.strokeOutline()
                        .transform(toPixels)
                        .outline()
                        .toShape(shape.strokeOutline().rule()));
            }
        }
        graphics.dispose();
        return image;
    }

    /** Intersection over union of two coverages. */
    private static double overlap(BufferedImage picture, int cell, BufferedImage ours) {
        double both = 0;
        double either = 0;
        for (int y = 0; y < CELL; y++) {
            for (int x = 0; x < CELL; x++) {
                int a = 255 - (picture.getRGB(cell % COLUMNS * CELL + x, cell / COLUMNS * CELL + y) & 0xFF);
                int b = 255 - ours.getRaster().getSample(x, y, 0);
                both += Math.min(a, b);
                either += Math.max(a, b);
            }
        }
        return either == 0 ? 1 : both / either;
    }
}
