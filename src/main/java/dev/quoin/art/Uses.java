package dev.quoin.art;

import java.util.BitSet;

/**
 * What a template asked of a row to draw an item.
 *
 * @param columns those asked for, from 0
 * @param joined those in whose values a line break was set as a space, since the text has no more lines
 * @param ownToItem whether it asked for what differs between the copies of a row, such as a serial number; if not, all
 *     copies look alike
 */
public record Uses(BitSet columns, BitSet joined, boolean ownToItem) {
    static final Uses NOTHING = new Uses(new BitSet(), new BitSet(), false);
}
