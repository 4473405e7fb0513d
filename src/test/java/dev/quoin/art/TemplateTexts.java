package dev.quoin.art;

import dev.quoin.geometry.Affine;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The texts of a template, read by the platform's own XML parser; fonts are given by attributes, as in ours. */
record TemplateTexts(String svg, List<Text> all) {
    /**
     * A text of a template.
     *
     * @param number in the order of the file
     * @param x of its lines
     * @param anchor how much of a line lies before it: 0, 0.5 or 1
     * @param turned the sum of the rotations around it, degrees clockwise
     */
    record Text(
            int number,
            boolean isFitted,
            String family,
            int weight,
            double size,
            List<Double> x,
            double anchor,
            double turned) {}

    static TemplateTexts of(String svg) {
        NodeList found = parse(svg).getElementsByTagName("text");
        List<Text> all = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            all.add(text(i, (Element) found.item(i)));
        }
        return new TemplateTexts(svg, all);
    }

    /** From units of the viewBox, y down, to the item. */
    Affine toItem() {
        Element root = parse(svg).getDocumentElement();
        String[] box = root.getAttribute("viewBox").split(" ");
        // Batik has already brought the drawing to the page, in pixels of its own of which 96 make an inch.
        double width = Double.parseDouble(box[2]);
        double height = Double.parseDouble(box[3]);
        double mm = mm(root.getAttribute("width")) / width;
        return new Affine(mm, 0, 0, -mm, -mm * width / 2, mm * height / 2);
    }

    /** The drawing with one text only, its lines as said, its letters placed, in a font that is a resource. */
    String only(Text text, List<String> lines, List<double[]> places, String resource) {
        Document document = parse(svg);
        document.getDocumentElement().removeAttribute("width");
        document.getDocumentElement().removeAttribute("height");
        String[] box = document.getDocumentElement().getAttribute("viewBox").split(" ");
        document.getDocumentElement().setAttribute("width", box[2]);
        document.getDocumentElement().setAttribute("height", box[3]);
        NodeList found = document.getElementsByTagName("text");
        for (int i = found.getLength() - 1; i >= 0; i--) {
            Element element = (Element) found.item(i);
            if (i == text.number()) {
                element.setAttribute("text-anchor", "start");
                element.setAttribute("font-weight", "normal");
                element.setAttribute("font-family", "'" + resource + "'");
                List<Element> held = lineElements(element);
                for (int k = 0; k < held.size(); k++) {
                    held.get(k).setTextContent(lines.get(k));
                    held.get(k)
                            .setAttribute("x", list(places.get(k), lines.get(k).length()));
                }
            } else {
                element.getParentNode().removeChild(element);
            }
        }
        return write(document);
    }

    /** A drawing of one line on the baseline y = 0. */
    static String line(String line, double[] places, double size, String resource) {
        Document document = parse(
                "<svg xmlns='http://www.w3.org/2000/svg' width='100' height='100' viewBox='0 0 100 100'><text/></svg>");
        Element text = (Element) document.getElementsByTagName("text").item(0);
        text.setAttribute("font-family", "'" + resource + "'");
        text.setAttribute("font-size", String.valueOf(size));
        text.setAttribute("x", list(places, line.length()));
        text.setAttribute("y", "0");
        text.setTextContent(line);
        return write(document);
    }

    private static Text text(int number, Element text) {
        List<Double> x = lineElements(text).stream()
                .map(line -> Double.valueOf(line.getAttribute("x")))
                .toList();
        String weight = inherited(text, "font-weight", "400");
        double anchor =
                switch (inherited(text, "text-anchor", "start")) {
                    case "middle" -> 0.5;
                    case "end" -> 1;
                    default -> 0;
                };
        return new Text(
                number,
                text.hasAttribute("data-fit"),
                inherited(text, "font-family", "").split(",")[0].strip(),
                weight.equals("bold") ? 700 : Integer.parseInt(weight),
                Double.parseDouble(inherited(text, "font-size", "")),
                x,
                anchor,
                turned(text));
    }

    private static List<Element> lineElements(Element text) {
        NodeList spans = text.getElementsByTagName("tspan");
        List<Element> lines = new ArrayList<>();
        for (int i = 0; i < spans.getLength(); i++) {
            lines.add((Element) spans.item(i));
        }
        return lines.isEmpty() ? List.of(text) : lines;
    }

    private static String inherited(Element element, String name, String otherwise) {
        if (element.hasAttribute(name)) {
            return element.getAttribute(name);
        }
        return element.getParentNode() instanceof Element above ? inherited(above, name, otherwise) : otherwise;
    }

    private static double turned(Element element) {
        Matcher rotation = Pattern.compile("rotate\\((-?[0-9.]+)").matcher(element.getAttribute("transform"));
        double own = rotation.find() ? Double.parseDouble(rotation.group(1)) : 0;
        return element.getParentNode() instanceof Element above ? own + turned(above) : own;
    }

    private static double mm(String length) {
        double number = Double.parseDouble(length.replaceAll("[a-z]", ""));
        return length.endsWith("cm") ? 10 * number : number;
    }

    private static String list(double[] places, int count) {
        return DoubleStream.of(places)
                .limit(count)
                .mapToObj(place -> String.format(Locale.ROOT, "%.6f", place))
                .collect(Collectors.joining(" "));
    }

    private static Document parse(String svg) {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(svg)));
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private static String write(Document document) {
        try {
            StringWriter out = new StringWriter();
            TransformerFactory.newInstance().newTransformer().transform(new DOMSource(document), new StreamResult(out));
            return out.toString();
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }
}
