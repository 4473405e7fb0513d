package dev.quoin.store;

import dev.quoin.drawing.PathData;
import dev.quoin.geometry.FillRule;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Reads the marks of some items back from a plate file. */
public final class PlateReader {
    private static final Pattern ITEM = Pattern.compile("step-(\\d+)-item-(\\d+)");

    private final Set<Integer> wanted;
    private final Map<Integer, List<PlateMark>> found = new LinkedHashMap<>();

    private PlateReader(Set<Integer> wanted) {
        this.wanted = wanted;
        wanted.forEach(item -> found.put(item, new ArrayList<>()));
    }

    /**
     * The marks of these items, in the file's order; coordinates of the page, mm (y down).
     *
     * @throws IOException if the file cannot be read as a plate
     */
    public static Map<Integer, List<PlateMark>> read(InputStream plate, Set<Integer> items) throws IOException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        try {
            PlateReader reader = new PlateReader(items);
            reader.read(factory.createXMLStreamReader(plate));
            return reader.found;
        } catch (XMLStreamException | IllegalArgumentException e) {
            throw new IOException("a plate file is damaged: " + e.getMessage(), e);
        }
    }

    private void read(XMLStreamReader xml) throws XMLStreamException {
        int step = 0;
        int item = 0;
        while (xml.hasNext()) {
            if (xml.next() != XMLStreamConstants.START_ELEMENT) {
                continue;
            }
            if (xml.getLocalName().equals("g")) {
                Matcher id = ITEM.matcher(attribute(xml, "id"));
                boolean isItem = id.matches();
                step = isItem ? Integer.parseInt(id.group(1)) : 0;
                item = isItem ? Integer.parseInt(id.group(2)) : 0;
            } else if (xml.getLocalName().equals("path") && wanted.contains(item)) {
                found.get(item).add(mark(step, xml));
            }
        }
    }

    private static PlateMark mark(int step, XMLStreamReader xml) {
        boolean evenOdd = attribute(xml, "fill-rule").equals("evenodd");
        return new PlateMark(
                step, PathData.parse(attribute(xml, "d")), evenOdd ? FillRule.EVEN_ODD : FillRule.NON_ZERO);
    }

    private static String attribute(XMLStreamReader xml, String name) {
        String value = xml.getAttributeValue(null, name);
        return value == null ? "" : value;
    }
}
