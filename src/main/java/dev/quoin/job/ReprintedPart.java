package dev.quoin.job;

import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.Stand;
import java.util.List;

/**
 * What is marked again while the jig stands in one way.
 *
 * @param items with their marks, each at its place in the field
 */
record ReprintedPart(Stand stand, List<LoadedItem> items) {
    ReprintedPart {
        items = List.copyOf(items);
    }
}
