package dev.quoin.plate;

/** Whether a slot can take the items of a group. */
public enum SlotState {
    /** It can. */
    OPEN,
    /** It could, but the job leaves it empty. */
    SKIPPED,
    /** The jig says that it must not be used. */
    UNUSABLE,
    /** Its pocket is too small for the ink of some item. */
    TOO_SMALL,
    /** Some item's ink would leave the field. */
    OUT_OF_REACH
}
