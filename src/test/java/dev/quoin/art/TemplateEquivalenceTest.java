package dev.quoin.art;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Polyline;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.font.TextAttribute;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Every text of every template we ship or test with, for rows of real names, against Batik 1.19 drawing the same words
 * in the same font and size: within 0.002 mm. Batik neither kerns nor joins letters, so it is told where each letter
 * stands, by the platform's shaper; texts with joined letters are left out. A text that stands as drawn is compared
 * where it stands; one that was fitted is compared in its size, its letters, its lines and its squeeze, and Batik's is
 * laid on the corner of our box, since Batik fits nothing.
 */
class TemplateEquivalenceTest {
    private static final java.nio.file.Path SHIPPED = java.nio.file.Path.of("templates");
    private static final java.nio.file.Path TESTED = java.nio.file.Path.of("src/test/resources/dev/quoin/art");
    private static final int ROWS = 12;
    private static final double SAME = 0.002;
    /** From one baseline to the next, ems. */
    private static final double LEADING = 1.2;

    /** How far lines may leave the curves that they stand for, mm. */
    private static final double FLAT = 2e-4;

    private static final GeometryFactory JTS = new GeometryFactory();
    private static final FontRenderContext UNHINTED = new FontRenderContext(null, true, true);
    private static final Map<String, String> FILES = files();

    static List<java.nio.file.Path> templates() throws IOException {
        try (Stream<java.nio.file.Path> shipped = Files.list(SHIPPED);
                Stream<java.nio.file.Path> tested = Files.list(TESTED)) {
            return Stream.concat(shipped, tested)
                    .filter(file -> file.toString().endsWith(".svg"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("templates")
    void textsStandWithin2MicrometresOfBatiks(java.nio.file.Path file) throws IOException {
        String svg = Files.readString(file);
        TemplateTexts texts = TemplateTexts.of(svg);
        Merged merged = Merged.columns("Name", "Role", "Since", "Line 2");
        Template template = merged.compile(svg);
        int compared = 0;
        for (String[] row : rows()) {
            Optional<Artwork> artwork = merged.drawn(template, row);
            // A name may be too long for its box.
            if (artwork.isPresent()) {
                compared += compare(texts, artwork.get());
            }
        }
        assertTrue(compared >= ROWS, file + ": only " + compared + " texts could be compared");
    }

    private static List<String[]> rows() throws IOException {
        List<String> names = names();
        List<String[]> rows = new ArrayList<>();
        for (int i = 0; i < ROWS; i++) {
            String name = names.get(i * 97 % names.size()) + " " + names.get((i * 61 + 30) % names.size());
            rows.add(new String[] {name, "Deputy pilot " + i, "May " + (1990 + i), "Hut " + i});
        }
        return rows;
    }

    private static List<String> names() throws IOException {
        try (InputStream in = TemplateEquivalenceTest.class.getResourceAsStream("/dev/quoin/names/names.tsv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .map(line -> line.split("\t", -1))
                    .filter(cells -> List.of("de", "en", "es", "pl", "sv").contains(cells[0]))
                    .map(cells -> cells[2])
                    .toList();
        }
    }

    private static int compare(TemplateTexts texts, Artwork artwork) {
        List<Mark> marks =
                artwork.marks().stream().filter(mark -> !mark.constant()).toList();
        List<MarkedText> said =
                artwork.texts().stream().filter(text -> !text.text().isBlank()).toList();
        assertTrue(marks.size() == said.size() && said.size() == texts.all().size(), "a mark for each text");
        int compared = 0;
        for (int i = 0; i < said.size(); i++) {
            TemplateTexts.Text text = texts.all().get(i);
            Font font = kerned(FILES.get(text.family() + " " + text.weight()));
            List<String> lines = said.get(i).text().lines().toList();
            if (lines.stream().allMatch(line -> isSetLetterByLetter(line, font))) {
                Path ours = marks.get(i).path();
                Path batik = text.isFitted() ? fitted(text, said.get(i), lines, ours) : placed(texts, text, lines);
                double distance = distance(ours, batik);
                assertTrue(distance < SAME, lines + " is off by " + distance);
                compared++;
            }
        }
        return compared;
    }

    /** Batik's letters where the template has them. */
    private static Path placed(TemplateTexts texts, TemplateTexts.Text text, List<String> lines) {
        String resource = FILES.get(text.family() + " " + text.weight());
        List<double[]> places = new ArrayList<>();
        for (String line : lines) {
            double[] at = places(line, kerned(resource), text.size());
            double lead = text.anchor() * at[line.length()];
            double x = text.x().get(places.size());
            for (int i = 0; i < at.length; i++) {
                at[i] += x - lead;
            }
            places.add(at);
        }
        return BatikText.outline(texts.only(text, lines, places, resource), "").transform(texts.toItem());
    }

    /** Batik's letters in our size, one line under the other, laid on our box. */
    private static Path fitted(TemplateTexts.Text text, MarkedText said, List<String> lines, Path ours) {
        String resource = FILES.get(text.family() + " " + text.weight());
        double size = said.capHeight() / Merged.capHeight(text.family(), text.weight());
        Path.Builder block = Path.builder();
        for (int i = 0; i < lines.size(); i++) {
            double[] at = places(lines.get(i), kerned(resource), size);
            Path line = BatikText.outline(TemplateTexts.line(lines.get(i), at, size, resource), "");
            Box ink = line.bounds();
            double flush = ink.minX() + text.anchor() * ink.width();
            block.append(line.transform(Affine.translate(-flush, 0))
                    .transform(new Affine(said.squeeze(), 0, 0, -1, 0, -i * LEADING * size)));
        }
        Path turned = block.build().transform(Affine.rotate(-text.turned()));
        Box from = turned.bounds();
        return turned.transform(Affine.translate(
                ours.bounds().minX() - from.minX(), ours.bounds().minY() - from.minY()));
    }

    private static boolean isSetLetterByLetter(String line, Font font) {
        return font.canDisplayUpTo(line) < 0 && layOut(line, font).getNumGlyphs() == line.length();
    }

    private static Font kerned(String resource) {
        return BatikText.font(resource)
                .deriveFont(1000f)
                .deriveFont(Map.of(
                        TextAttribute.KERNING, TextAttribute.KERNING_ON,
                        TextAttribute.LIGATURES, TextAttribute.LIGATURES_ON));
    }

    private static GlyphVector layOut(String line, Font font) {
        return font.layoutGlyphVector(UNHINTED, line.toCharArray(), 0, line.length(), Font.LAYOUT_LEFT_TO_RIGHT);
    }

    /** Where each letter starts, and where the line ends. */
    private static double[] places(String line, Font font, double size) {
        GlyphVector laidOut = layOut(line, font);
        double[] places = new double[line.length() + 1];
        for (int i = 0; i < places.length; i++) {
            places[i] = laidOut.getGlyphPosition(i).getX() * size / 1000;
        }
        return places;
    }

    private static Map<String, String> files() {
        Map<String, String> files = new HashMap<>();
        try (InputStream in =
                TemplateEquivalenceTest.class.getResourceAsStream("/dev/quoin/lettering/fonts/families.txt")) {
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n", -1)) {
                String[] cells = line.split("; ", -1);
                if (cells.length == 4 && !cells[2].equals("italic")) {
                    files.put(cells[0] + " " + cells[1], cells[3]);
                }
            }
            return files;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The largest distance between an outline and the same outline of the other, corner by corner and between. */
    private static double distance(Path path, Path other) {
        List<Polyline> ours = path.flatten(FLAT);
        List<Polyline> theirs = other.flatten(FLAT);
        assertEquals(theirs.size(), ours.size(), "as many outlines");
        double most = 0;
        for (int i = 0; i < ours.size(); i++) {
            Geometry one = ring(ours.get(i));
            Geometry two = ring(theirs.get(i));
            most = Math.max(most, DiscreteHausdorffDistance.distance(one, two));
        }
        return most;
    }

    private static Geometry ring(Polyline line) {
        Coordinate[] points = new Coordinate[line.size() + 1];
        for (int i = 0; i <= line.size(); i++) {
            points[i] = new Coordinate(line.x(i % line.size()), line.y(i % line.size()));
        }
        return JTS.createLineString(points);
    }
}
