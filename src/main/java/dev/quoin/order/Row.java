package dev.quoin.order;

import java.util.List;

/**
 * A record of the order.
 *
 * @param index its position in the order, from 0
 * @param line the line of the file on which it starts, from 1
 * @param cells as they stand in the file, outer blanks and all; as many as the order has headers
 */
public record Row(int index, int line, List<String> cells) {
    public Row {
        cells = List.copyOf(cells);
    }
}
