package dev.quoin.plate;

import dev.quoin.shop.Blank;
import dev.quoin.shop.Jig;
import dev.quoin.shop.Lens;
import dev.quoin.shop.Recipe;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Puts groups into the order in which the machine is set up the fewest times: those of one set-up next to one another,
 * and the set-ups so that from one to the next as few as can be of lens, jig, blank and recipe change. Groups that leave
 * a choice keep their order.
 */
public final class ChangeOvers {
    /** Up to here every order is weighed (M. Held and R. Karp, 1962); over it, each next one is the nearest. */
    private static final int MOST_WEIGHED = 12;

    private record SetUp(Recipe recipe, Optional<Blank> blank, Jig jig, Lens lens) {
        static SetUp of(Group group) {
            return new SetUp(group.recipe(), group.blank(), group.jig(), group.lens());
        }

        int changes(SetUp other) {
            return (recipe.equals(other.recipe) ? 0 : 1)
                    + (blank.equals(other.blank) ? 0 : 1)
                    + (jig.equals(other.jig) ? 0 : 1)
                    + (lens.equals(other.lens) ? 0 : 1);
        }
    }

    private final int[][] changes;
    private final int count;

    private ChangeOvers(List<SetUp> setUps) {
        count = setUps.size();
        changes = new int[count][count];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                changes[i][j] = setUps.get(i).changes(setUps.get(j));
            }
        }
    }

    /** The groups in such an order. */
    public static List<Group> fewest(List<Group> groups) {
        Map<SetUp, List<Group>> bySetUp = new LinkedHashMap<>();
        groups.forEach(group -> bySetUp.computeIfAbsent(SetUp.of(group), made -> new ArrayList<>())
                .add(group));
        List<SetUp> setUps = List.copyOf(bySetUp.keySet());
        ChangeOvers search = new ChangeOvers(setUps);
        return (setUps.size() <= MOST_WEIGHED ? search.best() : search.nearestNext())
                .stream()
                        .flatMap(index -> bySetUp.get(setUps.get(index)).stream())
                        .toList();
    }

    private List<Integer> best() {
        int[][] least = leastFrom();
        List<Integer> order = new ArrayList<>();
        int left = (1 << count) - 1;
        while (left != 0) {
            int now = left;
            int next = IntStream.range(0, count)
                    .filter(i -> (now & 1 << i) != 0)
                    .boxed()
                    .min((a, b) -> Integer.compare(step(order, a) + least[now][a], step(order, b) + least[now][b]))
                    .orElseThrow();
            order.add(next);
            left &= ~(1 << next);
        }
        return order;
    }

    private int step(List<Integer> order, int next) {
        return order.isEmpty() ? 0 : changes[order.get(order.size() - 1)][next];
    }

    /** For each set of set-ups that are left, as bits, and one of them: the fewest changes when that one comes first. */
    private int[][] leastFrom() {
        int[][] least = new int[1 << count][count];
        for (int left = 1; left < 1 << count; left++) {
            for (int first = 0; first < count; first++) {
                int rest = left & ~(1 << first);
                if (rest != left && rest != 0) {
                    least[left][first] = leastAfter(first, rest, least[rest]);
                }
            }
        }
        return least;
    }

    private int leastAfter(int first, int rest, int[] leastOfRest) {
        return IntStream.range(0, count)
                .filter(next -> (rest & 1 << next) != 0)
                .map(next -> changes[first][next] + leastOfRest[next])
                .min()
                .orElseThrow();
    }

    private List<Integer> nearestNext() {
        boolean[] done = new boolean[count];
        List<Integer> order = new ArrayList<>();
        while (order.size() < count) {
            int next = IntStream.range(0, count)
                    .filter(i -> !done[i])
                    .boxed()
                    .min((a, b) -> Integer.compare(step(order, a), step(order, b)))
                    .orElseThrow();
            done[next] = true;
            order.add(next);
        }
        return order;
    }
}
