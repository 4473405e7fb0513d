package dev.quoin.paper;

/** What is to be done with a slot on a plate. */
public enum SlotState {
    /** A blank is laid in it. */
    FILLED(""),
    /** It could take a blank and gets none on this plate. */
    EMPTY("empty"),
    /** The jig says that it must not be used. */
    UNUSABLE("do not use"),
    /** The lens does not reach all of its item. */
    OUT_OF_REACH("out of reach");

    private final String word;

    SlotState(String word) {
        this.word = word;
    }

    /** The word that papers write in it; empty for a filled one. */
    public String word() {
        return word;
    }
}
