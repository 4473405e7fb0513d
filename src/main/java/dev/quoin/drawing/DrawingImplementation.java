package dev.quoin.drawing;

import java.net.URL;
import org.apache.batik.anim.dom.SVGDOMImplementation;
import org.apache.batik.anim.dom.SVGOMDocument;
import org.apache.batik.css.engine.CSSContext;
import org.apache.batik.css.engine.CSSEngine;
import org.apache.batik.css.engine.SVGCSSEngine;
import org.apache.batik.css.engine.value.ShorthandManager;
import org.apache.batik.css.engine.value.ValueManager;
import org.apache.batik.css.parser.ExtendedParser;
import org.apache.batik.dom.AbstractStylableDocument;
import org.apache.batik.util.ParsedURL;
import org.w3c.css.sac.CSSParseException;
import org.w3c.css.sac.ErrorHandler;
import org.w3c.css.sac.InputSource;
import org.w3c.dom.Document;

/** Batik's documents, with a style parser that does not pass over errors. */
final class DrawingImplementation extends SVGDOMImplementation {
    /** Never opened; Batik wants its documents to have an address. */
    private static final String ADDRESS = "file:///drawing.svg";

    private static final long serialVersionUID = 1;

    private final transient QuietAgent agent;

    DrawingImplementation(QuietAgent agent) {
        this.agent = agent;
    }

    /** An empty drawing. */
    Document newDocument() {
        Document document = createDocument(SvgHandler.SVG, "svg", null);
        ((SVGOMDocument) document).setParsedURL(new ParsedURL(ADDRESS));
        return document;
    }

    @Override
    public CSSEngine createCSSEngine(
            AbstractStylableDocument document,
            CSSContext context,
            ExtendedParser parser,
            ValueManager[] values,
            ShorthandManager[] shorthands) {
        ParsedURL address = ((SVGOMDocument) document).getParsedURL();
        CSSEngine engine = new SVGCSSEngine(document, address, parser, values, shorthands, context);
        URL defaults = SVGDOMImplementation.class.getResource("resources/UserAgentStyleSheet.css");
        ParsedURL source = new ParsedURL(defaults);
        engine.setUserAgentStyleSheet(engine.parseStyleSheet(new InputSource(source.toString()), source, "all"));
        parser.setErrorHandler(new Complaints());
        return engine;
    }

    private final class Complaints implements ErrorHandler {
        @Override
        public void warning(CSSParseException e) {
            // Nothing is lost by it.
        }

        @Override
        public void error(CSSParseException e) {
            agent.displayError(e);
        }

        @Override
        public void fatalError(CSSParseException e) {
            throw e;
        }
    }
}
