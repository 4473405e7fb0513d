package dev.quoin.job;

import dev.quoin.art.Artwork;
import dev.quoin.order.Item;
import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.Plate;
import dev.quoin.plate.Seat;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Merges what is to be marked on a plate. */
record PlateLoader(LoadedJob job) {
    /** Its items in seat order; copies of a row share their artwork. */
    List<LoadedItem> load(Plate plate) throws IOException {
        List<LoadedItem> loaded = new ArrayList<>();
        int lastRow = -1;
        Artwork artwork = Artwork.EMPTY;
        for (Seat seat : plate.seats()) {
            Item item = job.items().numbered(seat.item());
            if (item.row().index() != lastRow) {
                artwork = new RowMerge(job).merge(item.row());
                lastRow = item.row().index();
            }
            loaded.add(LoadedItem.of(
                    seat.item(), seat.placement(), artwork, plate.group().recipe()));
        }
        return loaded;
    }
}
