package dev.quoin.art;

import java.util.Locale;

/**
 * Serial numbers. Each item has its own by its number, so that it continues across plates, stays the same in a reprint, and
 * is not given away when a row is left out.
 *
 * @param start the first item's
 * @param step from one item to the next; not 0
 * @param width the least number of digits, filled with zeros
 * @param prefix stands before the digits
 */
public record Serial(long start, long step, int width, String prefix) {
    /** The number of an item, without prefix. */
    public long number(int item) {
        return Math.addExact(start, Math.multiplyExact(step, item - 1L));
    }

    /** As it is marked; {@code item} is its number, from 1. */
    public String of(int item) {
        return prefix + String.format(Locale.ROOT, "%0" + width + "d", number(item));
    }
}
