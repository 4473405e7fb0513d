package dev.quoin.job;

import dev.quoin.art.Artwork;
import dev.quoin.art.SameSize;
import dev.quoin.art.SharedSizes;
import dev.quoin.order.Item;
import dev.quoin.order.Row;
import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.Part;
import dev.quoin.plate.Plate;
import dev.quoin.plate.Seat;
import dev.quoin.plate.Stand;
import dev.quoin.plate.Wrap;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Merges items that the survey found right once more, now with the sizes that they share with others. */
record ItemMerge(LoadedJob job, Sharing sharing) {
    /** The items of a part of a plate, loaded, in slot order. */
    List<LoadedItem> load(Plate plate, Part part) throws IOException {
        List<Artwork> artworks = merge(part.seats(), part.stand(), sizes(plate));
        List<LoadedItem> loaded = new ArrayList<>();
        for (int i = 0; i < artworks.size(); i++) {
            Seat seat = part.seats().get(i);
            LoadedItem item = LoadedItem.of(
                    seat.item(),
                    seat.placement(),
                    artworks.get(i),
                    plate.group().recipe());
            loaded.add(wrap(plate, part).map(item::showing).orElse(item));
        }
        return loaded;
    }

    private static Optional<Wrap> wrap(Plate plate, Part part) {
        return plate.group().jig().round().flatMap(piece -> part.stand().band().map(band -> new Wrap(piece, band)));
    }

    /** The sizes that items of a plate keep to. */
    SharedSizes sizes(Plate plate) throws IOException {
        if (!sharing.byPlate()) {
            return sharing.ofOrder();
        }
        SharedSizes sizes = sharing.ofOrder().copy();
        for (Part part : plate.parts()) {
            List<Artwork> artworks = merge(part.seats(), part.stand(), sharing.ofOrder());
            for (int i = 0; i < artworks.size(); i++) {
                Item item = job.items().numbered(part.seats().get(i).item());
                sizes.take(choice(item.row()).side(part.stand()).template(), artworks.get(i), SameSize.PLATE);
            }
        }
        return sizes;
    }

    /**
     * An item's artwork on the side that is up.
     *
     * @throws IllegalStateException if it has errors now, which would mean that merging depends on something else
     */
    Artwork merge(Item item, Stand stand, SharedSizes sizes) throws IOException {
        Problems none = new Problems();
        Row row = item.row();
        Choice choice = choice(row);
        return choice.side(stand)
                .template()
                .merge(item, job.order().place(row), choice.group().recipe(), sizes, none)
                .orElseThrow(
                        () -> new IllegalStateException("line " + row.line() + " was right before: " + none.sorted()));
    }

    /** What is chosen for a row. */
    Choice choice(Row row) throws IOException {
        return job.chooser()
                .choose(row, new Problems())
                .orElseThrow(() -> new IllegalStateException("line " + row.line() + " had a choice before"));
    }

    /** Copies of a row share their artwork, unless something on it is the item's own. */
    private List<Artwork> merge(List<Seat> seats, Stand stand, SharedSizes sizes) throws IOException {
        List<Artwork> artworks = new ArrayList<>();
        int lastRow = -1;
        Artwork artwork = Artwork.EMPTY;
        for (Seat seat : seats) {
            Item item = job.items().numbered(seat.item());
            if (item.row().index() != lastRow || artwork.uses().ownToItem()) {
                artwork = merge(item, stand, sizes);
                lastRow = item.row().index();
            }
            artworks.add(artwork);
        }
        return artworks;
    }
}
