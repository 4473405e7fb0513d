package dev.quoin.job;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;

/**
 * Works pieces out on several threads, and takes what comes of them on the calling thread alone, in the order of the
 * pieces: what is written does not depend on the number of threads. Only a few pieces are under way at a time. The calling
 * thread works too, whenever the next result is not ready.
 */
final class InOrder implements AutoCloseable {
    /** Pieces under way for each thread: enough that none waits for work, few enough to be held in memory. */
    private static final int AHEAD = 3;

    private final int threads;
    private final ExecutorService helpers;

    /** @param threads at least 1; with 1, pieces are worked out one after the other, each taken before the next */
    InOrder(int threads) {
        this.threads = threads;
        this.helpers = Executors.newFixedThreadPool(Math.max(1, threads - 1), InOrder::helper);
    }

    private static Thread helper(Runnable work) {
        Thread thread = new Thread(work, "quoin-helper");
        thread.setDaemon(true);
        return thread;
    }

    /** Gives the pieces, one after the other; nothing after the last. */
    interface Source<T> {
        Optional<T> next() throws IOException;
    }

    /** The pieces of a list. */
    static <T> Source<T> each(List<T> pieces) {
        Iterator<T> left = pieces.iterator();
        return () -> left.hasNext() ? Optional.of(left.next()) : Optional.empty();
    }

    /** What is done with each piece; must not depend on other pieces. */
    interface Work<T, R> {
        R on(T piece) throws IOException;
    }

    /** Is given the results in order. */
    interface Taking<R> {
        void take(R result) throws IOException;
    }

    /**
     * Works all pieces out. They are asked for on the calling thread, in order.
     *
     * @throws IOException if a piece cannot be worked out or taken; those after it are left
     */
    <T, R> void run(Source<T> pieces, Work<T, R> work, Taking<R> taking) throws IOException {
        Deque<FutureTask<R>> underWay = new ArrayDeque<>();
        boolean more = true;
        while (more || !underWay.isEmpty()) {
            while (more && underWay.size() < ahead()) {
                Optional<T> piece = pieces.next();
                piece.ifPresent(one -> underWay.add(begun(one, work)));
                more = piece.isPresent();
            }
            if (!underWay.isEmpty()) {
                help(underWay);
                taking.take(result(underWay.remove()));
            }
        }
    }

    private <T, R> FutureTask<R> begun(T piece, Work<T, R> work) {
        FutureTask<R> task = new FutureTask<>(() -> work.on(piece));
        if (threads > 1) {
            helpers.execute(task);
        }
        return task;
    }

    private int ahead() {
        return threads == 1 ? 1 : AHEAD * threads;
    }

    /** Does what no helper has begun, from the first on, until the first is done. A task that was begun runs no second time. */
    private static <R> void help(Deque<FutureTask<R>> underWay) {
        for (FutureTask<R> task : underWay) {
            if (underWay.element().isDone()) {
                return;
            }
            task.run();
        }
    }

    private static <R> R result(FutureTask<R> task) throws IOException {
        try {
            return task.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted", e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof IOException failed) {
                throw failed;
            }
            if (e.getCause() instanceof RuntimeException fault) {
                throw fault;
            }
            if (e.getCause() instanceof Error fault) {
                throw fault;
            }
            throw new IllegalStateException(e.getCause());
        }
    }

    /** What was left is not begun; what is under way, after a failure, ends before this returns: it may be writing files. */
    @Override
    public void close() {
        helpers.shutdownNow();
        try {
            if (!helpers.awaitTermination(1, TimeUnit.MINUTES)) {
                throw new IllegalStateException("a helper does not end");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
