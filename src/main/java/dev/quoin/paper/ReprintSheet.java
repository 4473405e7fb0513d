package dev.quoin.paper;

import java.io.IOException;
import java.io.Writer;
import java.util.Map;

/** Writes the small sheet of a reprint, one HTML file (UTF-8) that needs nothing beside it. */
public final class ReprintSheet {
    /**
     * Writes the whole sheet; the writer is neither flushed nor closed.
     *
     * @throws IOException if the writer fails
     */
    public void write(Writer out, ReprintView reprint) throws IOException {
        PlateView plate = reprint.plate();
        Templates.write(
                "reprint-sheet.ftlh",
                Map.of("reprint", reprint, "plate", plate, "picture", JigPicture.of(plate.slots())),
                out);
    }
}
