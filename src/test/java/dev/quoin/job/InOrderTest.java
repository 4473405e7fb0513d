package dev.quoin.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** However many threads work, results are taken in the order of the pieces, on the calling thread. */
class InOrderTest {
    private static final List<Integer> PIECES = IntStream.range(0, 500).boxed().toList();

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 8})
    void resultsComeInTheOrderOfThePieces(int threads) throws IOException {
        List<Integer> taken = new ArrayList<>();
        Thread caller = Thread.currentThread();
        try (InOrder inOrder = new InOrder(threads)) {
            inOrder.run(InOrder.each(PIECES), InOrderTest::slowerForEvenOnes, result -> {
                assertEquals(caller, Thread.currentThread());
                taken.add(result);
            });
        }
        assertEquals(PIECES.stream().map(piece -> 2 * piece).toList(), taken);
    }

    private static int slowerForEvenOnes(int piece) {
        int rounds = piece % 2 == 0 ? 2_000 : 0;
        for (int i = 0; i < rounds; i++) {
            Thread.onSpinWait();
        }
        return 2 * piece;
    }

    @Test
    void severalThreadsWorkAtATime() throws IOException {
        CountDownLatch both = new CountDownLatch(2);
        try (InOrder inOrder = new InOrder(2)) {
            inOrder.run(
                    InOrder.each(List.of(1, 2)),
                    piece -> {
                        both.countDown();
                        return await(both);
                    },
                    result -> assertTrue(result, "each waited for the other to begin"));
        }
    }

    private static boolean await(CountDownLatch latch) {
        try {
            return latch.await(10, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            return false;
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 8})
    void onlyAFewPiecesAreUnderWayAtATime(int threads) throws IOException {
        AtomicInteger begun = new AtomicInteger();
        AtomicInteger taken = new AtomicInteger();
        try (InOrder inOrder = new InOrder(threads)) {
            inOrder.run(
                    InOrder.each(PIECES),
                    piece -> {
                        assertTrue(begun.incrementAndGet() - taken.get() <= 3 * threads);
                        return piece;
                    },
                    result -> taken.incrementAndGet());
        }
        assertEquals(PIECES.size(), taken.get());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 8})
    void aPieceThatFailsEndsTheWorkAfterThoseBeforeItAreTaken(int threads) {
        List<Integer> taken = new ArrayList<>();
        try (InOrder inOrder = new InOrder(threads)) {
            IOException failed = assertThrows(
                    IOException.class,
                    () -> inOrder.run(
                            InOrder.each(PIECES),
                            piece -> {
                                if (piece == 20) {
                                    throw new IOException("piece 20");
                                }
                                return piece;
                            },
                            taken::add));
            assertEquals("piece 20", failed.getMessage());
        }
        assertEquals(PIECES.subList(0, 20), taken);
    }
}
