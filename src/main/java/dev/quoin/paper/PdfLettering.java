package dev.quoin.paper;

import com.openhtmltopdf.extend.FSDOMMutator;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Decimals;
import dev.quoin.lettering.TypesetText;
import java.text.Bidi;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;

/**
 * Replaces texts that a PDF's own font cannot set (Arabic, Hebrew, Japanese, Thai ...) by drawings of them, which lie in the
 * line like words. A text that begins from the right is drawn as a whole, so that its order holds.
 */
final class PdfLettering implements FSDOMMutator {
    private static final Set<String> BOLD = Set.of("b", "th", "h1", "h2", "h3", "dd", "caption");
    private static final Set<String> NOT_TEXT = Set.of("svg", "style", "title");
    /** Longer drawings are cut between words, ems. */
    private static final double LONGEST = 12;
    /** Letters of scripts without spaces that are drawn together. */
    private static final int TOGETHER = 8;

    private static final int GRID = 1000;
    private static final int ABOVE = 1000;
    private static final int BELOW = 320;

    private final PaperType normal;
    private final PaperType bold;

    PdfLettering(PaperType normal, PaperType bold) {
        this.normal = normal;
        this.bold = bold;
    }

    @Override
    public void mutateDocument(Document document) {
        visit(document.getDocumentElement(), normal);
    }

    private void visit(Element element, PaperType around) {
        if (NOT_TEXT.contains(element.getTagName())) {
            return;
        }
        boolean isBold = BOLD.contains(element.getTagName())
                || element.getAttribute("class").contains("slot-id");
        PaperType type = isBold ? bold : around;
        for (Node node = element.getFirstChild(); node != null; ) {
            Node next = node.getNextSibling();
            if (node instanceof Element child) {
                visit(child, type);
            } else if (node instanceof Text text && !type.isPlain(text.getData())) {
                replace(text, type);
            }
            node = next;
        }
    }

    private static void replace(Text text, PaperType type) {
        Node parent = text.getParentNode();
        for (Node node : nodes(text, type)) {
            parent.insertBefore(node, text);
        }
        parent.removeChild(text);
    }

    /** A text that begins from the right as a whole; of others the parts that run from the right, and single words. */
    private static List<Node> nodes(Text text, PaperType type) {
        List<Node> nodes = new ArrayList<>();
        String data = text.getData();
        Bidi bidi = new Bidi(data, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
        if (!bidi.baseIsLeftToRight()) {
            addLines(nodes, text.getOwnerDocument(), data, type);
            return nodes;
        }
        int from = 0;
        while (from < data.length()) {
            int to = from + 1;
            boolean fromTheRight = bidi.getLevelAt(from) > 0;
            while (to < data.length() && (bidi.getLevelAt(to) > 0) == fromTheRight) {
                to++;
            }
            if (fromTheRight) {
                addLines(nodes, text.getOwnerDocument(), data.substring(from, to), type);
            } else {
                addWords(nodes, text.getOwnerDocument(), data.substring(from, to), type);
            }
            from = to;
        }
        return nodes;
    }

    /** As many words together as one drawing may hold; what does not fit stands on lines of its own. */
    private static void addLines(List<Node> nodes, Document document, String text, PaperType type) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.split("(?<= )")) {
            if (!line.isEmpty() && type.outline(line + word).advance() > LONGEST) {
                lines.add(line);
                line = "";
            }
            line += word;
        }
        lines.add(line);
        for (int i = 0; i < lines.size(); i++) {
            if (i > 0) {
                nodes.add(document.createElement("br"));
            }
            nodes.add(drawn(document, lines.get(i).strip(), type));
        }
    }

    private static void addWords(List<Node> nodes, Document document, String text, PaperType type) {
        for (String word : text.split("(?<=\\s)|(?=\\s)")) {
            if (type.isPlain(word)) {
                nodes.add(document.createTextNode(word));
            } else {
                (isSpaceless(word) ? cut(word) : List.of(word)).forEach(part -> nodes.add(drawn(document, part, type)));
            }
        }
    }

    private static boolean isSpaceless(String word) {
        return word.codePoints().anyMatch(Character::isIdeographic);
    }

    private static List<String> cut(String word) {
        List<String> parts = new ArrayList<>();
        int[] letters = word.codePoints().toArray();
        for (int i = 0; i < letters.length; i += TOGETHER) {
            parts.add(new String(letters, i, Math.min(TOGETHER, letters.length - i)));
        }
        return parts;
    }

    private static Element drawn(Document document, String text, PaperType type) {
        TypesetText set = type.outline(text);
        double width = Math.max(set.advance(), 0.01) * GRID;
        Element svg = document.createElement("svg");
        svg.setAttribute("class", "drawn");
        svg.setAttribute("aria-label", text);
        svg.setAttribute(
                "style",
                "width: " + Decimals.text(width / GRID, 3) + "em; height: "
                        + Decimals.text((ABOVE + BELOW) / (double) GRID, 3) + "em; vertical-align: "
                        + Decimals.text(-BELOW / (double) GRID, 3) + "em");
        svg.setAttribute("viewBox", "0 " + -ABOVE + " " + Decimals.mm(width) + " " + (ABOVE + BELOW));
        Element path = document.createElement("path");
        path.setAttribute("d", PathData.of(set.outline().transform(Affine.scale(GRID, GRID))));
        svg.appendChild(path);
        return svg;
    }
}
