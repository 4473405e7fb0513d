package dev.quoin.plate;

import java.util.List;

/** Items, by number and in working order, that stay on one plate if one plate holds them. */
public record Lot(List<Integer> items) {
    public Lot {
        items = List.copyOf(items);
    }

    int size() {
        return items.size();
    }
}
