package dev.quoin.store;

import dev.quoin.geometry.Decimals;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
 * @param reason in the user's words, on one line; may be empty
 * @param file the reprint's plate file where a reprint is meant, from the run folder; else empty
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

    public RunEvent {
        // A line of the file is an event, so that one cut short can be told from the others.
        reason = reason.replaceAll("\\p{Cntrl}+", " ").strip();
    }

    List<String> cells() {
        return List.of(
                at.toString(),
                kind.name().toLowerCase(Locale.ROOT),
                plate == 0 ? "" : Integer.toString(plate),
                item == 0 ? "" : Integer.toString(item),
                slot,
                seconds.isPresent() ? Decimals.seconds(seconds.getAsDouble()) : "",
                reason,
                file);
    }

    /** The event that these cells tell, or nothing if they tell none. */
    static Optional<RunEvent> of(List<String> cells) {
        try {
            return Optional.of(new RunEvent(
                    Instant.parse(cells.get(0)),
                    Kind.valueOf(cells.get(1).toUpperCase(Locale.ROOT)),
                    number(cells.get(2)),
                    number(cells.get(3)),
                    cells.get(4),
                    cells.get(5).isEmpty()
                            ? OptionalDouble.empty()
                            : OptionalDouble.of(Double.parseDouble(cells.get(5))),
                    cells.get(6),
                    cells.get(7)));
        } catch (DateTimeParseException | IllegalArgumentException notAnEvent) {
            return Optional.empty();
        }
    }

    private static int number(String cell) {
        return cell.isEmpty() ? 0 : Integer.parseInt(cell);
    }
}
