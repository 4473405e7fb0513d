package dev.quoin.art;

import java.util.OptionalInt;

/** A text could not be merged with a row. Caught inside this package and told as a problem. */
final class MergeFailure extends Exception {
    private final String remedy;
    private final transient OptionalInt column;

    MergeFailure(String message, String remedy) {
        this(message, remedy, OptionalInt.empty());
    }

    MergeFailure(String message, String remedy, OptionalInt column) {
        super(message);
        this.remedy = remedy;
        this.column = column;
    }

    /** The column whose value is at fault, from 0; empty where that is not known. */
    OptionalInt column() {
        return column;
    }

    String remedy() {
        return remedy;
    }
}
