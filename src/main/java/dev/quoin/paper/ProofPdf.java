package dev.quoin.paper;

import dev.quoin.lettering.FontLibrary;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Map;

/** A proof for the customer as PDF, with the same content as that of {@link ProofWriter}. */
public final class ProofPdf implements AutoCloseable {
    /** So many items are laid out together; those that follow begin on a new page. */
    private static final int TOGETHER = 120;

    private final PdfPages pages;
    private final SharedOutlines outlines = new SharedOutlines();
    private int items;

    /**
     * Begins a proof.
     *
     * @param fonts those of the job
     * @throws IOException if a bundled font cannot be read
     */
    public ProofPdf(ProofHead head, FontLibrary fonts) throws IOException {
        pages = new PdfPages("Proof: " + head.job(), "proof.css", fonts);
        pages.put("proof-lead.ftlh", Map.of("head", head));
    }

    /** Adds an item. */
    public void item(ProofItem item) throws IOException {
        if (items > 0 && items % TOGETHER == 0) {
            pages.endPages();
        }
        items++;
        pages.put("proof-item.ftlh", Map.of("item", item, "picture", ProofPicture.of(item, outlines)));
    }

    /** Adds the place to sign, and writes the whole. The stream stays open. */
    public void save(OutputStream out, ProofHead head) throws IOException {
        pages.put("proof-approval.ftlh", Map.of("head", head));
        pages.endPages();
        pages.save(out);
    }

    @Override
    public void close() throws IOException {
        pages.close();
    }
}
