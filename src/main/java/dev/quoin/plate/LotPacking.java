package dev.quoin.plate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Lays lots onto as few plates as it can without splitting one that a plate holds ({@link BinPacking}). A larger one
 * fills whole plates, and its rest is packed. Plates come in the order of their earliest lot.
 */
public final class LotPacking {
    private final List<Lot> lots;
    private final int first;
    private final int later;
    private final List<Load> loads = new ArrayList<>();
    private final List<Piece> pieces = new ArrayList<>();
    private int split;

    /** Items that lie together; {@code lot} is their lot's place in working order. */
    private record Piece(int lot, int size, List<Integer> items) {}

    /** The items of a plate; {@code lot} is the earliest that has any on it. */
    private record Load(int lot, List<Integer> items) {}

    private LotPacking(List<Lot> lots, int first, int later) {
        this.lots = lots;
        this.first = first;
        this.later = later;
    }

    /**
     * Packs lots.
     *
     * @param lots in working order
     * @param open at least one slot, unless there are no lots
     */
    public static PackedLots pack(List<Lot> lots, OpenSlots open) {
        return new LotPacking(lots, open.first().size(), open.later().size()).pack();
    }

    private PackedLots pack() {
        if (first < later) {
            // What lies in a jig that is filled in part is packed like a lot, before all others.
            pieces.add(new Piece(-1, later - first, List.of()));
        }
        for (int i = 0; i < lots.size(); i++) {
            fillWholePlates(i);
        }
        int whole = loads.size();
        Packing packing = BinPacking.pack(pieces.stream().mapToInt(Piece::size).toArray(), later);
        packing.bins().forEach(bin -> lay(bin.stream().map(pieces::get).toList()));
        loads.sort(Comparator.comparingInt(Load::lot));
        return new PackedLots(loads.stream().map(Load::items).toList(), whole + packing.bound(), split);
    }

    private void lay(List<Piece> bin) {
        List<Integer> items =
                bin.stream().flatMap(piece -> piece.items().stream()).toList();
        loads.add(new Load(bin.get(0).lot(), items));
    }

    private void fillWholePlates(int index) {
        List<Integer> items = lots.get(index).items();
        int from = 0;
        if (items.size() > later) {
            split++;
            for (; items.size() - from >= later; from += later) {
                loads.add(new Load(index, items.subList(from, from + later)));
            }
        }
        if (from < items.size()) {
            pieces.add(new Piece(index, items.size() - from, items.subList(from, items.size())));
        }
    }
}
