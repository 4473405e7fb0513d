package dev.quoin.problem;

import java.util.Comparator;

/**
 * Something found wrong in what the user gave.
 *
 * @param severity how much it matters
 * @param place where it stands
 * @param item the number of the item it concerns, from 1; 0 where it concerns none
 * @param message what is wrong, with its names and values; no full stop
 * @param remedy what to do about it; no full stop; empty where the message says it
 */
public record Problem(Severity severity, Place place, int item, String message, String remedy)
        implements Comparable<Problem> {
    private static final Comparator<Problem> ORDER = Comparator.comparing(Problem::place)
            .thenComparing(Problem::severity)
            .thenComparingInt(Problem::item)
            .thenComparing(Problem::message);

    public static Problem error(Place place, String message, String remedy) {
        return new Problem(Severity.ERROR, place, 0, message, remedy);
    }

    public static Problem warning(Place place, String message, String remedy) {
        return new Problem(Severity.WARNING, place, 0, message, remedy);
    }

    public static Problem note(Place place, String message, String remedy) {
        return new Problem(Severity.NOTE, place, 0, message, remedy);
    }

    /** The same problem, found in an item. */
    public Problem inItem(int number) {
        return new Problem(severity, place, number, message, remedy);
    }

    public boolean isError() {
        return severity == Severity.ERROR;
    }

    /** By place, then the worst first. */
    @Override
    public int compareTo(Problem other) {
        return ORDER.compare(this, other);
    }

    /** The message without the name of the option that is its place, so that it is not told twice. */
    public String said() {
        String named = place.toString().replaceFirst("^--", "") + ": ";
        return message.startsWith(named) ? message.substring(named.length()) : message;
    }

    /** One line for a person: place, what is wrong, what to do. */
    @Override
    public String toString() {
        String kind = isError() ? "" : severity.name().toLowerCase(java.util.Locale.ROOT) + ": ";
        String what = place + ": " + kind + said() + (remedy.isEmpty() ? "" : "; " + remedy);
        return what.replaceAll("[\\r\\n\\t]+", " ");
    }
}
