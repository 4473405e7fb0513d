package dev.quoin.order;

import java.util.Optional;

/** One kind of doubt about the values of a column. All values are shown to it first, then judged one by one. */
interface ColumnDoubts {
    /** Sees a value; blanks around it are gone, and it is not empty. */
    default void see(String value) {
        // Most need no more than the value itself.
    }

    /** What is doubtful about a value, now that all have been seen; mostly nothing. */
    Optional<Doubt> judge(String value);
}
