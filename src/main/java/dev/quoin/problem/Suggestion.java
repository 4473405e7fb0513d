package dev.quoin.problem;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the name that a user most likely meant. */
public final class Suggestion {
    private Suggestion() {}

    /** The known name nearest to {@code given}, if one is near enough to be worth a mention: a third of its length. */
    public static Optional<String> nearest(String given, Collection<String> known) {
        String wanted = given.toLowerCase(Locale.ROOT);
        return known.stream()
                .filter(name -> distance(wanted, name.toLowerCase(Locale.ROOT)) <= Math.max(1, given.length() / 3))
                .min(Comparator.<String>comparingInt(name -> distance(wanted, name.toLowerCase(Locale.ROOT)))
                        .thenComparing(Comparator.naturalOrder()));
    }

    /** "did you mean X?" where a near name exists, else the list of what is known. */
    public static String remedy(String given, Collection<String> known) {
        return nearest(given, known)
                .map(name -> "did you mean '" + name + "'?")
                .orElseGet(() -> known.isEmpty() ? "none is known" : "known: " + String.join(", ", known));
    }

    /** Levenshtein's edit distance: the least number of letters put in, taken out or changed. */
    private static int distance(String a, String b) {
        int[] previous = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            previous[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] current = new int[b.length() + 1];
            current[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = previous[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                current[j] = Math.min(change, Math.min(previous[j], current[j - 1]) + 1);
            }
            previous = current;
        }
        return previous[b.length()];
    }
}
