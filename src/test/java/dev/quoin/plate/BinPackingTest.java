package dev.quoin.plate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;

/** Pieces packed into bins: published instances, and laws that an exhaustive search can confirm on small ones. */
class BinPackingTest {
    /**
     * The proven optima of u120_00 to u120_19 (E. Falkenauer, J. Heuristics 2(1):5-30, 1996; two of the OR-Library's own
     * values, u120_08 and u120_19, are one too high). Those after the tenth are the OR-Library's, u120_19 corrected.
     */
    private static final List<Integer> OPTIMA =
            List.of(48, 49, 46, 49, 50, 48, 48, 49, 50, 46, 52, 49, 48, 49, 50, 48, 52, 52, 49, 49);

    @Test
    void thePublishedInstancesAreAllPackedIntoTheLeastNumberOfBins() throws IOException {
        List<Packing> packings = new ArrayList<>();
        for (Instance instance : orLibrary()) {
            Packing packing = BinPacking.pack(instance.sizes(), instance.capacity());
            assertIsPacking(packing, instance.sizes(), instance.capacity());
            packings.add(packing);
        }
        assertEquals(
                OPTIMA, packings.stream().map(packing -> packing.bins().size()).toList());
    }

    @Test
    void theBoundProvesThePublishedOptima() throws IOException {
        List<Integer> bounds = orLibrary().stream()
                .map(instance -> PackingBound.of(instance.sizes(), instance.capacity()))
                .toList();
        assertEquals(OPTIMA, bounds);
    }

    @Test
    void theSamePiecesAlwaysGiveTheSameBins() throws IOException {
        Instance instance = orLibrary().get(8);
        assertEquals(
                BinPacking.pack(instance.sizes(), instance.capacity()),
                BinPacking.pack(instance.sizes(), instance.capacity()));
    }

    @Test
    void noPiecesNeedNoBin() {
        assertEquals(new Packing(List.of(), 0), BinPacking.pack(new int[0], 10));
    }

    @Test
    void aPieceLargerThanABinIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> BinPacking.pack(new int[] {3, 11}, 10));
    }

    /** First fit, the largest first, lays 5 + 4, 3 + 3 + 3 and 2; but 5 + 3 + 2 and 4 + 3 + 3 fill two bins. */
    @Test
    void theSearchFindsWhatFirstFitMisses() {
        Packing packing = BinPacking.pack(new int[] {5, 4, 3, 3, 3, 2}, 10);
        assertEquals(2, packing.bins().size());
        assertTrue(packing.isProvenLeast());
    }

    @Property(tries = 300, seed = "2026")
    void packingsLieBetweenTheBoundAndElevenNinths(
            @ForAll @Size(min = 1, max = 9) List<@IntRange(min = 1, max = 12) Integer> given) {
        int[] sizes = given.stream().mapToInt(Integer::intValue).toArray();
        Packing packing = BinPacking.pack(sizes, 12);
        int optimum = leastByExhaustion(sizes, 12);
        assertIsPacking(packing, sizes, 12);
        assertTrue(packing.bound() <= optimum, "bound " + packing.bound() + " over the optimum " + optimum);
        assertTrue(packing.bins().size() >= optimum);
        assertTrue(9 * packing.bins().size() <= 11 * optimum + 6, packing.bins() + " for " + optimum);
    }

    @Property(tries = 50, seed = "2026")
    void thePartsOfFullBinsAreNeverPackedWorseThanElevenNinths(
            @ForAll @Size(min = 20, max = 60) List<@IntRange(min = 20, max = 70) Integer> firsts) {
        int[] sizes = firsts.stream()
                .flatMap(first -> List.of(first, (150 - first) / 2, 150 - first - (150 - first) / 2).stream())
                .mapToInt(Integer::intValue)
                .toArray();
        Packing packing = BinPacking.pack(sizes, 150);
        assertIsPacking(packing, sizes, 150);
        assertEquals(firsts.size(), packing.bound());
        assertTrue(9 * packing.bins().size() <= 11 * firsts.size() + 6);
    }

    private static void assertIsPacking(Packing packing, int[] sizes, int capacity) {
        List<Integer> all =
                packing.bins().stream().flatMap(List::stream).sorted().toList();
        assertEquals(IntStream.range(0, sizes.length).boxed().toList(), all);
        for (List<Integer> bin : packing.bins()) {
            assertTrue(bin.stream().mapToInt(piece -> sizes[piece]).sum() <= capacity);
        }
        assertTrue(packing.bins().size() >= packing.bound());
    }

    private static int leastByExhaustion(int[] sizes, int capacity) {
        return least(sizes, 0, new int[sizes.length], 0, capacity);
    }

    private static int least(int[] sizes, int next, int[] loads, int used, int capacity) {
        if (next == sizes.length) {
            return used;
        }
        int least = Integer.MAX_VALUE;
        for (int bin = 0; bin <= used && bin < loads.length; bin++) {
            if (loads[bin] + sizes[next] <= capacity) {
                loads[bin] += sizes[next];
                least = Math.min(least, least(sizes, next + 1, loads, Math.max(used, bin + 1), capacity));
                loads[bin] -= sizes[next];
            }
        }
        return least;
    }

    private record Instance(String name, int[] sizes, int capacity) {}

    /** The file's form: how many instances; for each its name, then capacity, pieces and best known, then the sizes. */
    private static List<Instance> orLibrary() throws IOException {
        String cases = System.getProperty("quoin.cases", "");
        Path file = Path.of(cases, "packing", "binpack1.txt");
        Assumptions.assumeTrue(!cases.isEmpty() && Files.exists(file), "skipped: quoin.cases has no packing folder");
        Iterator<String> words =
                Arrays.asList(Files.readString(file).strip().split("\\s+")).iterator();
        List<Instance> instances = new ArrayList<>();
        for (int left = Integer.parseInt(words.next()); left > 0; left--) {
            String name = words.next();
            int capacity = Integer.parseInt(words.next());
            int[] sizes = new int[Integer.parseInt(words.next())];
            words.next();
            for (int i = 0; i < sizes.length; i++) {
                sizes[i] = Integer.parseInt(words.next());
            }
            instances.add(new Instance(name, sizes, capacity));
        }
        return instances;
    }
}
