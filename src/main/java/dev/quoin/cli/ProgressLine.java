package dev.quoin.cli;

import dev.quoin.job.Progress;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/** A progress bar on a terminal, for work that is long enough to be waited for. */
final class ProgressLine implements Progress, AutoCloseable {
    /** Shorter work shows no bar: it would only flash. */
    private static final long WORTH_SHOWING = 200;

    private final boolean shown;
    private String stage = "";
    private ProgressBar bar;

    ProgressLine(boolean shown) {
        this.shown = shown;
    }

    @Override
    public void report(String newStage, long done, long total) {
        if (!shown || total < WORTH_SHOWING) {
            return;
        }
        if (!newStage.equals(stage)) {
            close();
            stage = newStage;
            bar = new ProgressBarBuilder()
                    .setTaskName(newStage)
                    .setInitialMax(total)
                    .setStyle(ProgressBarStyle.ASCII)
                    .setUpdateIntervalMillis(100)
                    .clearDisplayOnFinish()
                    .build();
        }
        bar.stepTo(done);
    }

    @Override
    public void close() {
        if (bar != null) {
            bar.close();
        }
    }
}
