package dev.quoin.job;

import dev.quoin.drawing.SvgDrawing;
import dev.quoin.paper.ReprintSheet;
import dev.quoin.paper.RunSheetWriter;
import dev.quoin.paper.Templates;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
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
    private final List<FutureTask<Boolean>> papers;

    private HeadStart(FutureTask<Boolean> drawings, List<String> templates) {
        this.drawings = drawings;
        this.papers = templates.stream().map(HeadStart::reading).toList();
    }

    /** Nothing is set up ahead. */
    public static HeadStart none() {
        return new HeadStart(done(), List.of());
    }

    /** Begins what a job is prepared with. */
    public static HeadStart toPrepare() {
        return new HeadStart(new FutureTask<>(HeadStart::draw), RunSheetWriter.TEMPLATES).begun();
    }

    /** Begins what a reprint is written with. */
    public static HeadStart toReprint() {
        return new HeadStart(done(), ReprintSheet.TEMPLATES).begun();
    }

    private static FutureTask<Boolean> done() {
        FutureTask<Boolean> done = new FutureTask<>(() -> true);
        done.run();
        return done;
    }

    /** On a thread that keeps no program from ending. */
    private HeadStart begun() {
        Thread thread = new Thread(this::run, "quoin-head-start");
        thread.setDaemon(true);
        thread.start();
        return this;
    }

    /** Waits until drawings can be read and drawn, and meanwhile does some of what is left. */
    void drawings() throws IOException {
        for (FutureTask<Boolean> paper : papers) {
            if (drawings.isDone()) {
                break;
            }
            paper.run();
        }
        await(drawings);
    }

    /** Waits until papers can be written. */
    void papers() throws IOException {
        for (FutureTask<Boolean> paper : papers) {
            await(paper);
        }
    }

    private void run() {
        drawings.run();
        papers.forEach(FutureTask::run);
    }

    private static boolean draw() {
        Problems problems = new Problems();
        return SvgDrawing.read("", DRAWING.getBytes(StandardCharsets.UTF_8), problems)
                .map(drawing -> drawing.draw(problems))
                .isPresent();
    }

    private static FutureTask<Boolean> reading(String template) {
        return new FutureTask<>(() -> {
            Templates.read(template);
            return true;
        });
    }

    private static void await(FutureTask<Boolean> task) throws IOException {
        task.run();
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
