package dev.quoin.art;

import java.util.List;

/**
 * Text of a template, ready to be merged with rows.
 *
 * @param parts what it is made of, one after the other
 * @param columns the columns that it uses, from 0, in the order of their use
 */
record TextSource(List<Part> parts, List<Integer> columns) {
    TextSource {
        parts = List.copyOf(parts);
        columns = List.copyOf(columns);
    }

    /** A literal, or a compiled placeholder. */
    @FunctionalInterface
    interface Part {
        String merge(RowModel row) throws MergeFailure;
    }

    /**
     * The text for a row.
     *
     * @throws MergeFailure if a value is missing or an expression cannot be worked out
     */
    String merge(RowModel row) throws MergeFailure {
        if (parts.size() == 1) {
            return parts.get(0).merge(row);
        }
        StringBuilder text = new StringBuilder();
        for (Part part : parts) {
            text.append(part.merge(row));
        }
        return text.toString();
    }
}
