package dev.quoin.drawing;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.ext.DefaultHandler2;

/** Makes the tree of elements from what the XML parser meets. Leaves out what an editor keeps for itself. */
final class SvgHandler extends DefaultHandler2 {
    static final String SVG = "http://www.w3.org/2000/svg";
    static final String XLINK = "http://www.w3.org/1999/xlink";
    private static final String XML = "http://www.w3.org/XML/1998/namespace";
    private static final int DEEPEST = 100;
    private static final int MOST_ELEMENTS = 100_000;
    private static final Set<String> SILENT = Set.of("title", "desc", "metadata");
    private static final Set<String> ANIMATION =
            Set.of("animate", "animateColor", "animateMotion", "animateTransform", "set", "discard");
    private static final Set<String> HOLDS_TEXT = Set.of("text", "tspan", "tref", "textPath", "altGlyph", "a", "style");

    private static final Pattern IMPORT = Pattern.compile("@import", Pattern.CASE_INSENSITIVE);

    /** Thrown to stop the parser, when the reason has been told. */
    static final class Stop extends SAXException {}

    private final SourceText source;
    private final Problems problems;
    private final Deque<SvgElement> open = new ArrayDeque<>();
    private final StringBuilder text = new StringBuilder();
    private Optional<SvgElement> root = Optional.empty();
    private Locator locator;
    private int depth;
    private int skipDepth;
    private int count;

    SvgHandler(SourceText source, Problems problems) {
        this.source = source;
        this.problems = problems;
    }

    Optional<SvgElement> root() {
        return root;
    }

    @Override
    public void setDocumentLocator(Locator parserLocator) {
        locator = parserLocator;
    }

    @Override
    public void startElement(String uri, String tag, String qName, Attributes attributes) throws Stop {
        depth++;
        flush();
        if (depth > DEEPEST) {
            stop(here(), "elements stand more than " + DEEPEST + " deep in each other", "ungroup the drawing");
        }
        if (skipDepth > 0) {
            return;
        }
        Place place = here();
        if (count >= MOST_ELEMENTS) {
            stop(place, "the drawing has more than " + MOST_ELEMENTS + " elements", "simplify it");
        }
        if (open.isEmpty() && !(uri.equals(SVG) && tag.equals("svg"))) {
            stop(
                    place,
                    "the drawing starts with <" + qName + ">, not with an <svg> of the namespace " + SVG,
                    "save it as SVG");
        }
        if (!uri.equals(SVG) || isLeftOut(tag, place)) {
            skipDepth = depth;
            return;
        }
        SvgElement element = new SvgElement(
                count++,
                tag,
                place,
                Optional.ofNullable(open.peek()),
                attributes(attributes, place),
                label(attributes));
        if (open.isEmpty()) {
            root = Optional.of(element);
        } else {
            open.peek().add(element);
        }
        open.push(element);
    }

    @Override
    public void endElement(String uri, String tag, String qName) {
        flush();
        if (skipDepth == 0) {
            open.pop();
        } else if (skipDepth == depth) {
            skipDepth = 0;
        }
        depth--;
    }

    @Override
    public void characters(char[] characters, int start, int length) {
        if (skipDepth == 0 && !open.isEmpty() && HOLDS_TEXT.contains(open.peek().tag())) {
            text.append(characters, start, length);
        }
    }

    @Override
    public void processingInstruction(String target, String data) {
        if (target.equals("xml-stylesheet")) {
            problems.error(
                    here(),
                    "the drawing takes its styles from another file, which is not followed",
                    "put them into a <style> element");
        }
    }

    @Override
    public InputSource resolveEntity(String name, String publicId, String baseUri, String systemId) throws Stop {
        if (!"[dtd]".equals(name)) {
            stop(here(), "an entity stands in another file, " + systemId + ", which is not read", "write it out");
        }
        return new InputSource(new StringReader(""));
    }

    @Override
    public void error(SAXParseException e) throws SAXException {
        throw e;
    }

    private boolean isLeftOut(String tag, Place place) {
        if (tag.equals("script")) {
            problems.warning(place, "a <script> is not run", "delete it");
        } else if (ANIMATION.contains(tag)) {
            problems.warning(place, "<" + tag + "> is left out, the drawing is marked as it stands", "delete it");
        } else {
            return SILENT.contains(tag);
        }
        return true;
    }

    private List<SvgAttribute> attributes(Attributes attributes, Place place) {
        List<SvgAttribute> kept = new ArrayList<>();
        for (int i = 0; i < attributes.getLength(); i++) {
            String uri = attributes.getURI(i);
            String name = attributes.getQName(i);
            if (uri.isEmpty() && name.startsWith("on")) {
                problems.warning(place, "the script in " + name + " is not run", "delete it");
            } else if (isKept(uri, name)) {
                variableText(attributes.getValue(i), place)
                        .ifPresent(value -> kept.add(new SvgAttribute(uri, name, value)));
            }
        }
        return List.copyOf(kept);
    }

    /** Editors keep the name of a layer in a namespace of their own. */
    private static String label(Attributes attributes) {
        for (int i = 0; i < attributes.getLength(); i++) {
            if (!attributes.getURI(i).isEmpty() && attributes.getLocalName(i).equals("label")) {
                return attributes.getValue(i).strip();
            }
        }
        return "";
    }

    private static boolean isKept(String uri, String name) {
        return uri.isEmpty() || uri.equals(XLINK) || (uri.equals(XML) && !name.equals("xml:base"));
    }

    private Optional<VariableText> variableText(String value, Place place) {
        try {
            return Optional.of(VariableText.parse(value));
        } catch (IllegalArgumentException e) {
            problems.error(source.find("${", place), e.getMessage(), "write it as ${name}");
            return Optional.empty();
        }
    }

    private void flush() {
        if (text.isEmpty()) {
            return;
        }
        SvgElement holder = open.element();
        String content = text.toString();
        text.setLength(0);
        holder.add(new SvgText(content));
        if (holder.tag().equals("style")) {
            checkSheet(content, holder.place());
        } else {
            variableText(content, holder.place());
        }
    }

    private void checkSheet(String content, Place place) {
        if (content.contains("${")) {
            problems.error(
                    source.find("${", place),
                    "a placeholder cannot stand in a <style> element",
                    "put it into the element's own style, class or attribute");
        }
        if (IMPORT.matcher(content).find()) {
            problems.error(
                    place, "a <style> element takes rules from another file, which is not read", "copy them into it");
        }
    }

    private Place here() {
        return source.tagThatEnds(locator.getLineNumber(), locator.getColumnNumber());
    }

    private void stop(Place place, String message, String remedy) throws Stop {
        problems.error(place, message, remedy);
        throw new Stop();
    }
}
