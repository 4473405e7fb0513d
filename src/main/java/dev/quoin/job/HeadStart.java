package dev.quoin.job;

import dev.quoin.drawing.SvgDrawing;
import dev.quoin.paper.RunSheetWriter;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/**
 * Sets up on another thread what libraries set up once, while the command line and the files of a job are read: the first
 * drawing and the first paper of a start would wait for it. Whoever needs a library waits here first, since two threads that
 * set up the same one might wait for each other for ever. What fails here fails again where it is needed, and is told there.
 */
public final class HeadStart {
    /** Something of each kind that templates are made of. */
    private static final String DRAWING = """
            <svg xmlns="http://www.w3.org/2000/svg" width="9mm" height="9mm" viewBox="0 0 9 9">
              <g class="engrave"><path d="M1 1C2 2 3 3 4 4Z"/><text x="1" y="2" font-size="3">a</text></g>
              <rect class="outline" x="1" y="1" width="7" height="7" rx="1" fill="none" stroke="#000"/>
            </svg>
            """;

    private final FutureTask<Boolean> drawings;
    private final FutureTask<Boolean> papers;

    private HeadStart(FutureTask<Boolean> drawings, FutureTask<Boolean> papers) {
        this.drawings = drawings;
        this.papers = papers;
    }

    /** Nothing is set up ahead. */
    public static HeadStart none() {
        HeadStart none = new HeadStart(new FutureTask<>(() -> true), new FutureTask<>(() -> true));
        none.run();
        return none;
    }

    /** Begins on a thread that keeps no program from ending. */
    public static HeadStart begin() {
        HeadStart ahead = new HeadStart(new FutureTask<>(HeadStart::draw), new FutureTask<>(HeadStart::readTemplates));
        Thread thread = new Thread(ahead::run, "quoin-head-start");
        thread.setDaemon(true);
        thread.start();
        return ahead;
    }

    /** Waits until drawings can be read and drawn, and meanwhile does what is left. */
    void drawings() throws IOException {
        if (!drawings.isDone()) {
            papers.run();
        }
        await(drawings);
    }

    /** Waits until papers can be written. */
    void papers() throws IOException {
        await(papers);
    }

    private void run() {
        drawings.run();
        papers.run();
    }

    private static boolean draw() {
        Problems problems = new Problems();
        return SvgDrawing.read("", DRAWING.getBytes(StandardCharsets.UTF_8), problems)
                .map(drawing -> drawing.draw(problems))
                .isPresent();
    }

    private static boolean readTemplates() throws IOException {
        RunSheetWriter.readTemplates();
        return true;
    }

    private static void await(FutureTask<Boolean> task) throws IOException {
        try {
            task.get();
        } catch (ExecutionException failed) {
            // It fails again where it is needed.
            return;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted", e);
        }
    }
}
