package dev.quoin.paper;

import java.io.IOException;
import java.io.Writer;
import java.util.Map;

/**
 * Writes a proof for the customer in pieces, so that no more than one piece of the order is held at a time: a head, the
 * items in order, a foot. The pieces one after the other are one HTML file (UTF-8) that needs nothing beside it.
 */
public final class ProofWriter {
    private final SharedOutlines outlines = new SharedOutlines();

    /**
     * Writes everything up to the first item.
     *
     * @throws IOException if the writer fails
     */
    public void head(Writer out, ProofHead head) throws IOException {
        Templates.write("proof-head.ftlh", Map.of("head", head), out);
    }

    /**
     * Writes an item.
     *
     * @throws IOException if the writer fails
     */
    public void item(Writer out, ProofItem item) throws IOException {
        Templates.write("proof-item.ftlh", Map.of("item", item, "picture", ProofPicture.of(item, outlines)), out);
    }

    /**
     * Writes everything after the last item.
     *
     * @throws IOException if the writer fails
     */
    public void foot(Writer out, ProofHead head) throws IOException {
        Templates.write("proof-foot.ftlh", Map.of("head", head), out);
    }
}
