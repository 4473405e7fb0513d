package dev.quoin.verify;

import dev.quoin.drawing.PathData;
import java.io.InputStream;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads a plate file as anyone's program may: as XML, without a thought for how it was written. It holds a page, a group
 * for each step, in it a group for each item, in that paths, and nothing else.
 */
final class PlateXml {
    private static final Pattern STEP = Pattern.compile("step-(\\d{1,9})-.+");
    private static final Pattern ITEM = Pattern.compile("step-(\\d{1,9})-item-(\\d{1,9})");
    private static final Pattern SIZE = Pattern.compile("(\\d+(?:\\.\\d+)?)mm");
    private static final int PAGE = 1;
    private static final int STEP_GROUP = 2;
    private static final int ITEM_GROUP = 3;

    private final PlateGroups groups;
    private int depth;
    private int step;

    private PlateXml(PlateGroups groups) {
        this.groups = groups;
    }

    /**
     * Reads it.
     *
     * @throws XMLStreamException if it is not XML, or not a plate
     */
    static void read(InputStream in, PlateGroups groups) throws XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        new PlateXml(groups).read(factory.createXMLStreamReader(in, "UTF-8"));
    }

    private void read(XMLStreamReader xml) throws XMLStreamException {
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                depth++;
                start(xml);
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                depth--;
            }
        }
    }

    private void start(XMLStreamReader xml) throws XMLStreamException {
        String name = xml.getLocalName();
        if (xml.getAttributeValue(null, "transform") != null) {
            throw fault(xml, "a transform");
        }
        if (depth == PAGE && name.equals("svg")) {
            page(xml);
        } else if (depth == STEP_GROUP && name.equals("g")) {
            step = Integer.parseInt(match(STEP, xml).group(1));
        } else if (depth == ITEM_GROUP && name.equals("g")) {
            item(xml);
        } else if (depth == ITEM_GROUP + 1 && name.equals("path")) {
            path(xml);
        } else {
            throw fault(xml, "an element '" + name + "' in a place where none may be");
        }
    }

    private void page(XMLStreamReader xml) throws XMLStreamException {
        Matcher width = SIZE.matcher(attribute(xml, "width"));
        Matcher height = SIZE.matcher(attribute(xml, "height"));
        if (!width.matches()
                || !height.matches()
                || !attribute(xml, "viewBox").equals("0 0 " + width.group(1) + " " + height.group(1))) {
            throw fault(xml, "a page that is not in millimetres");
        }
        groups.page(Double.parseDouble(width.group(1)), Double.parseDouble(height.group(1)));
    }

    private void item(XMLStreamReader xml) throws XMLStreamException {
        Matcher id = match(ITEM, xml);
        if (Integer.parseInt(id.group(1)) != step) {
            throw fault(xml, "a group of step " + id.group(1) + " inside step " + step);
        }
        groups.item(step, Integer.parseInt(id.group(2)));
    }

    private void path(XMLStreamReader xml) throws XMLStreamException {
        try {
            groups.path(PathData.parse(attribute(xml, "d")));
        } catch (IllegalArgumentException e) {
            throw fault(xml, "a path that cannot be read: " + e.getMessage());
        }
    }

    private static Matcher match(Pattern pattern, XMLStreamReader xml) throws XMLStreamException {
        Matcher id = pattern.matcher(attribute(xml, "id"));
        if (!id.matches()) {
            throw fault(xml, "a group with the id '" + attribute(xml, "id") + "'");
        }
        return id;
    }

    private static String attribute(XMLStreamReader xml, String name) {
        String value = xml.getAttributeValue(null, name);
        return value == null ? "" : value;
    }

    private static XMLStreamException fault(XMLStreamReader xml, String what) {
        return new XMLStreamException("line " + xml.getLocation().getLineNumber() + " has " + what);
    }
}
