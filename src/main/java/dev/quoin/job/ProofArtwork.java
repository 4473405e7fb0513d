package dev.quoin.job;

import dev.quoin.art.Artwork;
import dev.quoin.art.SharedSizes;
import dev.quoin.drawing.Page;
import dev.quoin.geometry.Box;
import dev.quoin.order.Item;
import dev.quoin.order.Row;
import dev.quoin.plate.Plate;
import dev.quoin.plate.Seat;
import dev.quoin.plate.Stand;
import java.io.IOException;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** The artwork of a plan's items row by row, as the plates will have it. */
final class ProofArtwork {
    private final LoadedJob job;
    private final Plan plan;
    private final ItemMerge merge;
    private final Plate[] plateOf;
    private final Seat[] seatOf;
    private final Map<Plate, SharedSizes> sizes = new IdentityHashMap<>();

    ProofArtwork(LoadedJob job, Plan plan) throws IOException {
        this.job = job;
        this.plan = plan;
        merge = new ItemMerge(job, plan.sharing());
        plateOf = new Plate[job.items().size() + 1];
        seatOf = new Seat[job.items().size() + 1];
        for (Plate plate : plan.plates()) {
            sizes.put(plate, merge.sizes(plate));
            for (Seat seat : plate.seats()) {
                plateOf[seat.item()] = plate;
                seatOf[seat.item()] = seat;
            }
        }
    }

    /** How many items the plan has, without those that only fill a plate. */
    int pieces() {
        return (int) plan.plates().stream()
                .flatMap(plate -> plate.seats().stream())
                .map(seat -> job.items().numbered(seat.item()))
                .filter(item -> item.copy() <= job.items().ofRow(item.row()).size())
                .count();
    }

    /** A row's items; none of a row that is left out. */
    List<Alike> of(Row row) throws IOException {
        List<List<Alike>> found = new ArrayList<>();
        for (Item item : job.items().ofRow(row)) {
            if (seatOf[item.number()] != null) {
                int last = found.size() - 1;
                if (last >= 0 && found.get(last).stream().allMatch(side -> isLike(side, item))) {
                    found.get(last).replaceAll(Alike::andOneMore);
                } else {
                    found.add(drawn(item));
                }
            }
        }
        return found.stream().flatMap(List::stream).toList();
    }

    /** The page of the template of a side around the item's centre, mm. */
    Box page(Alike alike) throws IOException {
        Page page = merge.choice(alike.first().row())
                .sides()
                .get(alike.back() ? 1 : 0)
                .template()
                .page();
        return Box.centred(page.width(), page.height());
    }

    /** Its front and, if it is marked too, its back. */
    private List<Alike> drawn(Item item) throws IOException {
        Plate plate = plateOf[item.number()];
        List<Alike> sides = new ArrayList<>();
        for (List<Stand> face : job.stands().faces()) {
            Artwork artwork = merge.merge(item, face.get(0), sizes.get(plate));
            sides.add(new Alike(
                    item, 1, artwork, plate, seatOf[item.number()], face.get(0).isBack()));
        }
        return sides;
    }

    /** Copies look alike, but for what is an item's own, and for sizes that each plate has for itself. */
    private boolean isLike(Alike last, Item item) {
        boolean sameSizes = !plan.sharing().byPlate() || last.plate() == plateOf[item.number()];
        return sameSizes && !last.artwork().uses().ownToItem();
    }
}
