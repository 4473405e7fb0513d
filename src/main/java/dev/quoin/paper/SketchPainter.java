package dev.quoin.paper;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import dev.quoin.lettering.TypesetText;
import java.awt.Color;
import java.io.IOException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Paints the few elements of SVG that papers' pictures are made of. */
final class SketchPainter {
    private static final Pattern MOVE = Pattern.compile("(translate|rotate)\\(([^)]*)\\)");

    private final PdfSketches sketches;
    private final PDPageContentStream content;

    SketchPainter(PdfSketches sketches, PDPageContentStream content) {
        this.sketches = sketches;
        this.content = content;
    }

    /** Paints what is inside an element that is painted in a style. */
    void paint(Element parent, SketchStyle style) throws IOException {
        for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element) {
                paintOne(element, style.of(element));
            }
        }
    }

    /** What has a name may be shown more than once, and is a form of its own then, which the file holds once. */
    private void paintOne(Element element, SketchStyle style) throws IOException {
        if (element.hasAttribute("id")) {
            content.drawForm(sketches.form(element, style));
        } else if (element.getTagName().equals("use")) {
            Element shown = sketches.named(element.getAttribute("href").substring(1));
            content.drawForm(sketches.form(shown, style.of(shown)));
        } else {
            paintNow(element, style);
        }
    }

    void paintNow(Element element, SketchStyle style) throws IOException {
        content.saveGraphicsState();
        move(element.getAttribute("transform"));
        switch (element.getTagName()) {
            case "g" -> paint(element, style);
            case "path" -> path(SvgPathData.read(element.getAttribute("d")), style);
            case "text" -> text(element, style);
            default -> throw new IllegalArgumentException("a picture with " + element.getTagName());
        }
        content.restoreGraphicsState();
    }

    private void move(String transform) throws IOException {
        for (Matcher each = MOVE.matcher(transform); each.find(); ) {
            String[] numbers = each.group(2).trim().split("[ ,]+");
            double first = Double.parseDouble(numbers[0]);
            content.transform(
                    each.group(1).equals("rotate")
                            ? Matrix.getRotateInstance(Math.toRadians(first), 0, 0)
                            : Matrix.getTranslateInstance((float) first, Float.parseFloat(numbers[1])));
        }
    }

    private void path(Path path, SketchStyle style) throws IOException {
        if (style.fill().startsWith("url")) {
            hatch(path, style.fill());
        } else if (!style.fill().equals("none")) {
            content.setNonStrokingColor(colour(style.fill()));
            PdfPath.draw(path, content);
            fill(style.evenOdd());
        }
        if (!style.stroke().equals("none")) {
            content.setStrokingColor(colour(style.stroke()));
            content.setLineWidth((float) style.strokeWidth());
            content.setLineDashPattern(dash(style.dash()), 0);
            PdfPath.draw(path, content);
            content.stroke();
        }
    }

    private void fill(boolean evenOdd) throws IOException {
        if (evenOdd) {
            content.fillEvenOdd();
        } else {
            content.fill();
        }
    }

    private void hatch(Path path, String fill) throws IOException {
        SketchHatch hatch = SketchHatch.named(fill);
        content.saveGraphicsState();
        PdfPath.draw(path, content);
        content.clip();
        content.setStrokingColor(Color.BLACK);
        content.setLineWidth((float) hatch.width());
        PdfPath.draw(hatch.over(path.bounds()), content);
        content.stroke();
        content.restoreGraphicsState();
    }

    private static float[] dash(String dash) {
        if (dash.isEmpty()) {
            return new float[0];
        }
        String[] words = dash.trim().split(" +");
        float[] lengths = new float[words.length];
        for (int i = 0; i < words.length; i++) {
            lengths[i] = Float.parseFloat(words[i]);
        }
        return lengths;
    }

    private void text(Element element, SketchStyle style) throws IOException {
        String text = element.getTextContent();
        PaperType type = sketches.type(style.bold());
        boolean plain = type.isPlain(text);
        TypesetText outline = plain ? null : type.outline(text);
        double advance = (plain ? type.advance(text) : outline.advance()) * style.size();
        double x = number(element, "x") - (style.middle() ? advance / 2 : 0);
        double y = number(element, "y");
        if (!style.stroke().equals("none")) {
            content.setNonStrokingColor(colour(style.stroke()));
            PdfPath.draw(Path.of(backing(x, y, advance, style)), content);
            content.fill();
        }
        content.setNonStrokingColor(colour(style.fill()));
        if (plain) {
            show(text, type, x, y, style.size());
        } else {
            Affine place = Affine.scale(style.size(), -style.size()).then(Affine.translate(x, y));
            PdfPath.draw(outline.outline().transform(place), content);
            content.fill();
        }
    }

    private void show(String text, PaperType type, double x, double y, double size) throws IOException {
        content.beginText();
        content.setFont(type.font(), (float) size);
        content.setTextMatrix(new Matrix(1, 0, 0, -1, (float) x, (float) y));
        content.showText(text);
        content.endText();
    }

    /** What keeps a hatch out of the writing on it. */
    private static Box backing(double x, double y, double advance, SketchStyle style) {
        double more = style.strokeWidth() / 2;
        return new Box(x - more, y - 0.76 * style.size() - more, x + advance + more, y + more);
    }

    private static double number(Element element, String name) {
        return element.hasAttribute(name) ? Double.parseDouble(element.getAttribute(name)) : 0;
    }

    private static Color colour(String hex) {
        return hex.length() == 4
                ? Color.decode("#" + hex.charAt(1) + hex.charAt(1) + hex.charAt(2) + hex.charAt(2) + hex.charAt(3)
                        + hex.charAt(3))
                : Color.decode(hex);
    }
}
