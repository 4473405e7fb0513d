package dev.quoin.drawing;

import dev.quoin.problem.Problems;
import org.w3c.dom.Element;

/** Tells problems of elements while a document is drawn. */
record Reporter(SvgDom dom, Problems problems) {
    /** An error of an element; the message continues its name. */
    void error(Element element, String message, String remedy) {
        dom.origin(element)
                .ifPresent(origin -> problems.error(origin.place(), origin.describe() + " " + message, remedy));
    }

    void warning(Element element, String message, String remedy) {
        dom.origin(element)
                .ifPresent(origin -> problems.warning(origin.place(), origin.describe() + " " + message, remedy));
    }
}
