package dev.quoin.format;

import dev.quoin.plate.LoadedItem;
import dev.quoin.shop.Step;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/** Writes plates as one kind of file; the same plate gives the same bytes. */
public interface PlateFormat {
    /** Writes a plate, or some steps of one. The stream stays open. */
    void write(OutputStream out, List<Step> steps, List<LoadedItem> items) throws IOException;
}
