package dev.quoin.paper;

import java.util.List;

/**
 * What follows the last plate.
 *
 * @param parcels the packing list; empty where there is none
 */
public record SheetFoot(List<Parcel> parcels) {
    public SheetFoot {
        parcels = List.copyOf(parcels);
    }

    /**
     * Pieces that are packed together.
     *
     * @param name for whom
     */
    public record Parcel(String name, List<Piece> pieces) {
        public Parcel {
            pieces = List.copyOf(pieces);
        }
    }

    /** A piece to pack: its item's number, the text on it, its plate's number and its slot. */
    public record Piece(int item, List<String> text, int plate, String slot) {
        public Piece {
            text = List.copyOf(text);
        }
    }
}
