package dev.quoin.job;

import dev.quoin.paper.ReprintSheet;
import dev.quoin.paper.RunSheetWriter;
import dev.quoin.paper.Templates;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/**
 * Loads FreeMarker and reads the templates of papers on another thread, while the command line and the files of a job or a run
 * are read: the first paper of a start would wait for it. Whoever writes papers waits here first. What fails here fails again
 * there, and is told there.
 */
public final class HeadStart {
    private final List<FutureTask<Void>> papers;

    private HeadStart(List<String> templates) {
        this.papers = templates.stream().map(HeadStart::reading).toList();
    }

    /** Nothing is read ahead. */
    public static HeadStart none() {
        return new HeadStart(List.of());
    }

    /** Begins what a run's sheet is written with. */
    public static HeadStart toPrepare() {
        return new HeadStart(RunSheetWriter.TEMPLATES).begun();
    }

    /** Begins what a reprint's sheet is written with. */
    public static HeadStart toReprint() {
        return new HeadStart(ReprintSheet.TEMPLATES).begun();
    }

    /** On a thread that keeps no program from ending. */
    private HeadStart begun() {
        Thread thread = new Thread(this::papers, "quoin-head-start");
        thread.setDaemon(true);
        thread.start();
        return this;
    }

    /** Reads what no other thread has begun to read, and waits for the rest. */
    void papers() {
        papers.forEach(HeadStart::await);
    }

    private static FutureTask<Void> reading(String template) {
        return new FutureTask<>(() -> {
            Templates.read(template);
            return null;
        });
    }

    private static void await(FutureTask<Void> task) {
        task.run();
        try {
            task.get();
        } catch (ExecutionException failed) {
            // It fails again where it is needed.
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
