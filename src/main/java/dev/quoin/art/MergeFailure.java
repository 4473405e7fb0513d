package dev.quoin.art;

/** A text could not be merged with a row. Caught inside this package and told as a problem. */
final class MergeFailure extends Exception {
    private final String remedy;

    MergeFailure(String message, String remedy) {
        super(message);
        this.remedy = remedy;
    }

    String remedy() {
        return remedy;
    }
}
