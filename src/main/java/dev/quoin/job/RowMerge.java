package dev.quoin.job;

import dev.quoin.art.Artwork;
import dev.quoin.order.Row;
import dev.quoin.problem.Problems;
import java.io.IOException;

/** Merges a row that the survey found right once more. */
record RowMerge(LoadedJob job) {
    /**
     * Its artwork.
     *
     * @throws IllegalStateException if it has errors now, which would mean that merging depends on something else
     */
    Artwork merge(Row row) throws IOException {
        Problems none = new Problems();
        Choice choice = choice(row);
        return choice.template()
                .merge(row.cells(), job.order().place(row), choice.group().recipe(), none)
                .orElseThrow(
                        () -> new IllegalStateException("line " + row.line() + " was right before: " + none.sorted()));
    }

    /** What is chosen for it. */
    Choice choice(Row row) throws IOException {
        return job.chooser()
                .choose(row, new Problems())
                .orElseThrow(() -> new IllegalStateException("line " + row.line() + " had a choice before"));
    }
}
