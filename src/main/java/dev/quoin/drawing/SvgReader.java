package dev.quoin.drawing;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.util.Optional;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/**
 * Reads an SVG file that may come from a stranger. Nothing outside the file is ever fetched, nothing in it is run, and
 * what would grow without end is stopped.
 */
final class SvgReader {
    private static final int MOST_BYTES = 20_000_000;
    private static final int MOST_ENTITY_EXPANSIONS = 1_000;
    private static final int MOST_ENTITY_CHARACTERS = 1_000_000;
    private static final String JDK_LIMIT = "http://www.oracle.com/xml/jaxp/properties/";
    private static final String LOAD_DTD = "http://apache.org/xml/features/nonvalidating/load-external-dtd";
    /** How the platform's parser begins its messages about its limits. */
    private static final String LIMIT_MESSAGE = "JAXP0001";

    private SvgReader() {}

    /** The root element, or nothing if an error was found. */
    static Optional<SvgElement> read(String file, byte[] content, Problems problems) {
        if (content.length > MOST_BYTES) {
            problems.error(
                    Place.of(file),
                    "the drawing has " + content.length / 1_000_000 + " MB, and at most " + MOST_BYTES / 1_000_000
                            + " MB are read",
                    "simplify its paths, or take pictures out of it");
            return Optional.empty();
        }
        try {
            return parse(file, SourceText.decode(file, content), problems);
        } catch (CharacterCodingException | IllegalArgumentException e) {
            problems.error(
                    Place.of(file),
                    "the file is not text in the encoding that it declares (UTF-8 if none)",
                    "save it as plain SVG in UTF-8");
            return Optional.empty();
        }
    }

    private static Optional<SvgElement> parse(String file, SourceText source, Problems problems) {
        int before = problems.errors();
        SvgHandler handler = new SvgHandler(source, problems);
        try {
            SAXParser parser = parser();
            parser.parse(new InputSource(new StringReader(source.text())), handler);
        } catch (SvgHandler.Stop stop) {
            return Optional.empty();
        } catch (SAXParseException e) {
            tell(file, e, problems);
        } catch (SAXException | ParserConfigurationException e) {
            throw new IllegalStateException("the platform's XML parser cannot be set up", e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return problems.errors() > before ? Optional.empty() : handler.root();
    }

    private static SAXParser parser() throws ParserConfigurationException, SAXException {
        SAXParserFactory factory = SAXParserFactory.newDefaultNSInstance();
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        factory.setFeature(LOAD_DTD, false);
        SAXParser parser = factory.newSAXParser();
        parser.setProperty(JDK_LIMIT + "entityExpansionLimit", String.valueOf(MOST_ENTITY_EXPANSIONS));
        parser.setProperty(JDK_LIMIT + "totalEntitySizeLimit", String.valueOf(MOST_ENTITY_CHARACTERS));
        return parser;
    }

    private static void tell(String file, SAXParseException e, Problems problems) {
        Place place = new Place(file, Math.max(0, e.getLineNumber()), Math.max(0, e.getColumnNumber()));
        if (e.getMessage().startsWith(LIMIT_MESSAGE)) {
            problems.error(
                    place,
                    "the drawing's entities or attributes grow beyond what is read",
                    "save it as plain SVG, without a DOCTYPE");
        } else {
            problems.error(place, "not well-formed XML: " + plain(e.getMessage()), "open and save it in an SVG editor");
        }
    }

    private static String plain(String message) {
        String line = message.strip();
        return line.endsWith(".") ? line.substring(0, line.length() - 1) : line;
    }
}
