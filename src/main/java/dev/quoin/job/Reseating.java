package dev.quoin.job;

import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.Part;
import dev.quoin.plate.PartPlan;
import dev.quoin.plate.Placement;
import dev.quoin.plate.Seat;
import dev.quoin.plate.SlotCheck;
import dev.quoin.plate.Stand;
import dev.quoin.plate.Stations;
import java.io.IOException;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Lays pieces of a group into other slots than their own: finds from which stands of the jig each is reached there. */
final class Reseating {
    private final ReprintedPlate sample;
    private final Map<String, Placement> home;
    private final List<List<Stand>> sides;
    /** Where each slot lies, by side and stand. */
    private final List<List<Map<String, Placement>>> places = new ArrayList<>();

    /**
     * A piece to be marked again.
     *
     * @param sides what is marked on its front and, if its back is marked too, on its back, each where it lay before
     */
    record Piece(List<LoadedItem> sides, RunItem row) {}

    /** @param sample a plate of the group, for what they have in common */
    Reseating(ReprintedPlate sample) throws IOException {
        this.sample = sample;
        this.home = sample.placements();
        this.sides = sample.shop().stands().faces();
        for (List<Stand> side : sides) {
            List<Map<String, Placement>> ofStands = new ArrayList<>();
            for (Stand stand : side) {
                ofStands.add(sample.shop().placements(sample.jig(), stand));
            }
            places.add(ofStands);
        }
    }

    /** The pieces of a plate of the group, in the order of loading. */
    static List<Piece> pieces(ReprintedPlate plate) {
        Map<Integer, List<LoadedItem>> sides = new LinkedHashMap<>();
        plate.parts().stream()
                .flatMap(part -> part.items().stream())
                .forEach(item -> sides.computeIfAbsent(item.item(), made -> new ArrayList<>())
                        .add(item));
        return plate.rows().stream()
                .map(row -> new Piece(sides.get(row.number()), row))
                .toList();
    }

    /** The jig's slots as it is loaded, by their ids. */
    Map<String, Placement> home() {
        return home;
    }

    /** Whether a piece can be marked in a slot. */
    boolean holds(Piece piece, String slot) {
        return IntStream.range(0, sides.size())
                .noneMatch(side -> reached(piece, side, slot).isEmpty());
    }

    /** The parts in which pieces are marked in slots that hold them. */
    List<ReprintedPart> parts(Map<String, Piece> bySlot) {
        List<Stations> stations = new ArrayList<>();
        for (int side = 0; side < sides.size(); side++) {
            int of = side;
            Map<String, BitSet> reached = new HashMap<>();
            bySlot.forEach((slot, piece) -> reached.put(slot, reached(piece, of, slot)));
            List<List<Placement>> placements = places.get(side).stream()
                    .map(ofStand -> List.copyOf(ofStand.values()))
                    .toList();
            stations.add(new Stations(sides.get(side), placements, reached));
        }
        Map<Integer, Piece> pieces = new HashMap<>();
        List<Seat> seats = new ArrayList<>();
        bySlot.forEach((slot, piece) -> {
            pieces.put(piece.row().number(), piece);
            seats.add(new Seat(piece.row().number(), home.get(slot)));
        });
        return new PartPlan(stations, List.copyOf(bySlot.keySet()))
                .parts(seats).stream().map(part -> part(part, pieces)).toList();
    }

    private static ReprintedPart part(Part part, Map<Integer, Piece> pieces) {
        int side = part.stand().isBack() ? 1 : 0;
        return new ReprintedPart(
                part.stand(),
                part.seats().stream()
                        .map(seat -> pieces.get(seat.item()).sides().get(side).movedTo(seat.placement()))
                        .toList());
    }

    private BitSet reached(Piece piece, int side, String slot) {
        LoadedItem item = piece.sides().get(side);
        BitSet stands = new BitSet();
        for (int stand = 0; stand < sides.get(side).size(); stand++) {
            Placement there = places.get(side).get(stand).get(slot);
            // Where it lay before it was proven to fit.
            boolean own = there.equals(item.placement());
            stands.set(stand, own || SlotCheck.holds(there, item, sample.recipe(), sample.lens()));
        }
        return stands;
    }
}
