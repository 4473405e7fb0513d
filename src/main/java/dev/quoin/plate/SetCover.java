package dev.quoin.plate;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * The fewest of some sets that together hold every element: branch and bound on the element that the fewest sets hold.
 * Elements of which no two share a set bound the number from below. Of several covers of that number, the first that is
 * found is taken, so that the same sets always give the same cover. The search takes time exponential in the worst case
 * and is limited; where the limit cuts it short, the best cover so far is given and {@link Cover#proven} is false.
 */
public final class SetCover {
    private static final int MOST_STEPS = 200_000;

    /**
     * A cover.
     *
     * @param sets their indexes, ascending
     * @param proven whether no cover has fewer
     */
    public record Cover(List<Integer> sets, boolean proven) {
        public Cover {
            sets = List.copyOf(sets);
        }
    }

    private final List<BitSet> sets;
    private final List<BitSet> holders = new ArrayList<>();
    private final List<Integer> chosen = new ArrayList<>();
    private List<Integer> best;
    private int steps;

    private SetCover(List<BitSet> sets, int elements) {
        this.sets = sets;
        for (int element = 0; element < elements; element++) {
            BitSet holding = new BitSet();
            for (int set = 0; set < sets.size(); set++) {
                holding.set(set, sets.get(set).get(element));
            }
            holders.add(holding);
        }
    }

    /**
     * Covers elements 0 to {@code elements - 1}.
     *
     * @throws IllegalArgumentException if an element is in none of the sets
     */
    public static Cover of(List<BitSet> sets, int elements) {
        SetCover search = new SetCover(sets, elements);
        if (search.holders.stream().anyMatch(BitSet::isEmpty)) {
            throw new IllegalArgumentException("an element is in no set");
        }
        BitSet all = new BitSet();
        all.set(0, elements);
        search.best = search.greedy(all);
        search.search(all);
        return new Cover(search.best.stream().sorted().toList(), search.steps < MOST_STEPS);
    }

    /** Always the set that holds the most of what is left. */
    private List<Integer> greedy(BitSet all) {
        List<Integer> taken = new ArrayList<>();
        BitSet left = (BitSet) all.clone();
        while (!left.isEmpty()) {
            int next = byGain(left).get(0);
            taken.add(next);
            left.andNot(sets.get(next));
        }
        return taken;
    }

    private void search(BitSet left) {
        if (left.isEmpty()) {
            best = List.copyOf(chosen);
            return;
        }
        if (++steps >= MOST_STEPS || chosen.size() + bound(left) >= best.size()) {
            return;
        }
        BitSet holding = holders.get(rarest(left));
        for (int set : byGain(left)) {
            if (holding.get(set)) {
                chosen.add(set);
                BitSet rest = (BitSet) left.clone();
                rest.andNot(sets.get(set));
                search(rest);
                chosen.remove(chosen.size() - 1);
            }
        }
    }

    /** So many elements, at least, no set holds two of. */
    private int bound(BitSet left) {
        BitSet used = new BitSet();
        List<Integer> elements = new ArrayList<>(left.stream().boxed().toList());
        elements.sort(Comparator.comparingInt(element -> holders.get(element).cardinality()));
        int apart = 0;
        for (int element : elements) {
            if (!used.intersects(holders.get(element))) {
                used.or(holders.get(element));
                apart++;
            }
        }
        return apart;
    }

    private int rarest(BitSet left) {
        return left.stream()
                .boxed()
                .min(Comparator.comparingInt(element -> holders.get(element).cardinality()))
                .orElseThrow();
    }

    /** The sets, that which holds the most of what is left first. */
    private List<Integer> byGain(BitSet left) {
        List<Integer> order = new ArrayList<>();
        int[] gains = new int[sets.size()];
        for (int set = 0; set < sets.size(); set++) {
            BitSet gain = (BitSet) sets.get(set).clone();
            gain.and(left);
            gains[set] = gain.cardinality();
            order.add(set);
        }
        order.sort(Comparator.comparingInt(set -> -gains[set]));
        return order;
    }
}
