package dev.quoin.cli;

import dev.quoin.job.Progress;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/** A progress bar on a terminal, for work that is long enough to be waited for. */
final class ProgressLine implements Progress, AutoCloseable {
    /** Work that ends sooner shows no bar, which would only flash, ms. */
    private static final long WORTH_SHOWING = 700;

    private final boolean shown;
    private String stage = "";
    private long begun;
    private ProgressBar bar;

    ProgressLine(boolean shown) {
        this.shown = shown;
    }

    @Override
    public void report(String newStage, long done, long total) {
        if (!shown) {
            return;
        }
        if (!newStage.equals(stage)) {
            close();
            stage = newStage;
            begun = System.nanoTime();
        }
        if (bar == null && done < total && System.nanoTime() - begun > WORTH_SHOWING * 1_000_000) {
            bar = new ProgressBarBuilder()
                    .setTaskName(newStage)
                    .setInitialMax(total)
                    .setStyle(ProgressBarStyle.ASCII)
                    .setUpdateIntervalMillis(100)
                    .clearDisplayOnFinish()
                    .build();
        }
        if (bar != null) {
            bar.stepTo(done);
        }
    }

    @Override
    public void close() {
        if (bar != null) {
            bar.close();
            bar = null;
        }
    }
}
