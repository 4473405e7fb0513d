package dev.quoin.job;

import dev.quoin.job.Reseating.Piece;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Seats pieces of one group on as few fresh plates as possible. Which slots hold a piece is a matter of its ink, so this is
 * a bipartite matching of pieces and seats (augmenting paths; Kuhn 1955, Berge 1957), with one plate more until all sit.
 * Seats are tried in the jig's order, so that pieces which fit anywhere fill it from its first slot.
 */
final class Seating {
    private static final int NONE = -1;

    private final ReprintedPlate sample;
    private final Reseating reseating;
    private final List<Piece> pieces;
    private final List<String> slots;
    private final boolean[][] holds;

    /**
     * Takes the pieces.
     *
     * @param sample a plate of the group, for what they have in common
     */
    Seating(ReprintedPlate sample, Reseating reseating, List<Piece> pieces) {
        this.sample = sample;
        this.reseating = reseating;
        this.pieces = pieces;
        this.slots = reseating.home().values().stream()
                .filter(placement -> placement.slot().usable()
                        && !sample.shop().isSkipped(placement.slot().id()))
                .map(placement -> placement.slot().id())
                .toList();
        this.holds = new boolean[pieces.size()][slots.size()];
        for (int piece = 0; piece < pieces.size(); piece++) {
            for (int slot = 0; slot < slots.size(); slot++) {
                holds[piece][slot] = reseating.holds(pieces.get(piece), slots.get(slot));
            }
        }
    }

    /** The plates, each with its pieces in slot order. */
    List<ReprintedPlate> plates() {
        int count = (pieces.size() + slots.size() - 1) / slots.size();
        while (true) {
            int[] pieceAt = seat(count);
            if (Arrays.stream(pieceAt).filter(piece -> piece != NONE).count() == pieces.size()) {
                return plates(pieceAt, count);
            }
            count++;
        }
    }

    private int[] seat(int plates) {
        int[] pieceAt = new int[plates * slots.size()];
        Arrays.fill(pieceAt, NONE);
        for (int piece = 0; piece < pieces.size(); piece++) {
            augment(piece, pieceAt, new boolean[pieceAt.length]);
        }
        return pieceAt;
    }

    /** Seats a piece, moving others on where that makes room. */
    private boolean augment(int piece, int[] pieceAt, boolean[] tried) {
        for (int seat = 0; seat < pieceAt.length; seat++) {
            if (holds[piece][seat % slots.size()] && pieceAt[seat] == NONE) {
                pieceAt[seat] = piece;
                return true;
            }
        }
        for (int seat = 0; seat < pieceAt.length; seat++) {
            if (holds[piece][seat % slots.size()] && !tried[seat]) {
                tried[seat] = true;
                if (augment(pieceAt[seat], pieceAt, tried)) {
                    pieceAt[seat] = piece;
                    return true;
                }
            }
        }
        return false;
    }

    private List<ReprintedPlate> plates(int[] pieceAt, int count) {
        List<ReprintedPlate> plates = new ArrayList<>();
        for (int plate = 0; plate < count; plate++) {
            Map<String, Piece> bySlot = new LinkedHashMap<>();
            for (int slot = 0; slot < slots.size(); slot++) {
                int piece = pieceAt[plate * slots.size() + slot];
                if (piece != NONE) {
                    bySlot.put(slots.get(slot), pieces.get(piece));
                }
            }
            if (!bySlot.isEmpty()) {
                List<RunItem> rows = bySlot.values().stream().map(Piece::row).toList();
                plates.add(sample.holding(reseating.parts(bySlot), rows));
            }
        }
        return plates;
    }
}
