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

    /** The least number of letters put in, taken out, changed, or swapped with their neighbour (Damerau, 1964). */
    private static int distance(String a, String b) {
        int[][] rows = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                rows[i][j] = i == 0 || j == 0 ? i + j : step(rows, a, b, i, j);
            }
        }
        return rows[a.length()][b.length()];
    }

    private static int step(int[][] rows, String a, String b, int i, int j) {
        int change = rows[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int least = Math.min(change, Math.min(rows[i - 1][j], rows[i][j - 1]) + 1);
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(least, rows[i - 2][j - 2] + 1) : least;
    }
}
