package dev.quoin.store;

import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Something that happened to a run after it was prepared: a line of {@code record/log.csv}.
 *
 * @param at when, UTC
 * @param kind what
 * @param plate the plate's number; 0 where none is meant
 * @param item the item's number; 0 where none is meant
 * @param slot the slot's id; empty where none is meant
 * @param seconds a measured time
 * @param reason in the user's words; may be empty
 * @param file the file that was written for it; may be empty
 */
public record RunEvent(
        Instant at, Kind kind, int plate, int item, String slot, OptionalDouble seconds, String reason, String file) {
    static final List<String> HEADER = List.of("at", "event", "plate", "item", "slot", "seconds", "reason", "file");

    /** What can happen. */
    public enum Kind {
        DONE,
        FAILED,
        REPRINTED
    }

    List<String> cells() {
        return List.of(
                at.toString(),
                kind.name().toLowerCase(java.util.Locale.ROOT),
                plate == 0 ? "" : Integer.toString(plate),
                item == 0 ? "" : Integer.toString(item),
                slot,
                seconds.isPresent() ? dev.quoin.geometry.Decimals.seconds(seconds.getAsDouble()) : "",
                reason,
                file);
    }
}
