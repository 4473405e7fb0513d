package dev.quoin.job;

import dev.quoin.drawing.SvgDrawing;
import dev.quoin.paper.ReprintSheet;
import dev.quoin.paper.RunSheetWriter;
import dev.quoin.paper.Templates;
import dev.quoin.problem.Problems;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/**
 * Sets up on another thread what libraries set up once, while the command line and the files of a job are read: the first
 * drawing and the first paper of a start would wait for it. Whoever draws waits here first, and so does whoever needs
 * FreeMarker until its language is loaded: two threads that load a library's classes might wait for each other for ever. What
 * fails here fails again where it is needed, and is told there.
 */
public final class HeadStart {
    /** Something of each kind that templates are made of. */
    private static final String DRAWING = """
            <svg xmlns="http://www.w3.org/2000/svg" width="9mm" height="9mm" viewBox="0 0 9 9">
              <g class="engrave"><path d="M1 1C2 2 3 3 4 4Z"/><text x="1" y="2" font-size="3">a</text></g>
              <rect class="outline" x="1" y="1" width="7" height="7" rx="1" fill="none" stroke="#000"/>
            </svg>
            """;

    private final FutureTask<Void> drawings;
    private final List<FutureTask<Void>> papers;

    private HeadStart(FutureTask<Void> drawings, List<String> templates) {
        this.drawings = drawings;
        this.papers = templates.stream().map(HeadStart::reading).toList();
    }

    /** Nothing is set up ahead. */
    public static HeadStart none() {
        HeadStart none = new HeadStart(new FutureTask<>(() -> null), List.of());
        none.drawings.run();
        return none;
    }

    /** Begins what a job is prepared with. */
    public static HeadStart toPrepare() {
        return new HeadStart(new FutureTask<>(HeadStart::draw, null), RunSheetWriter.TEMPLATES).begun();
    }

    /** Begins what a reprint is written with. */
    public static HeadStart toReprint() {
        return new HeadStart(new FutureTask<>(() -> null), ReprintSheet.TEMPLATES).begun();
    }

    /** On a thread that keeps no program from ending. */
    private HeadStart begun() {
        Thread thread = new Thread(this::run, "quoin-head-start");
        thread.setDaemon(true);
        thread.start();
        return this;
    }

    private void run() {
        drawings.run();
        papers();
    }

    /** Waits until drawings can be read and drawn and FreeMarker can be used, and meanwhile does some of what is left. */
    void drawings() {
        for (FutureTask<Void> paper : papers) {
            if (drawings.isDone()) {
                break;
            }
            await(paper);
        }
        await(drawings);
        // The first has the most of the language.
        papers.stream().findFirst().ifPresent(HeadStart::await);
    }

    /** Waits until papers can be written. */
    void papers() {
        papers.forEach(HeadStart::await);
    }

    private static void draw() {
        Problems problems = new Problems();
        SvgDrawing.read("", DRAWING.getBytes(StandardCharsets.UTF_8), problems)
                .ifPresent(drawing -> drawing.draw(problems));
    }

    private static FutureTask<Void> reading(String template) {
        return new FutureTask<>(() -> {
            Templates.read(template);
            return null;
        });
    }

    /** Does it, or waits for the thread that does. */
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
