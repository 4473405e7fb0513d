package dev.quoin.job;

import dev.quoin.art.Artwork;
import dev.quoin.order.Item;
import dev.quoin.plate.Plate;
import dev.quoin.plate.Seat;

/**
 * Items of one row, one after the other, that look alike.
 *
 * @param count how many; their numbers follow the first
 * @param plate the first one's
 * @param seat the first one's
 * @param back whether it is their back
 */
record Alike(Item first, int count, Artwork artwork, Plate plate, Seat seat, boolean back) {
    Alike andOneMore() {
        return new Alike(first, count + 1, artwork, plate, seat, back);
    }
}
