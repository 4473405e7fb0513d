package dev.quoin.paper;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Warmup;

/** Seconds for the blocks of 500 plates of a run sheet, 17 items each, by a program just started: no warm-up. */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(5)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
public class RunSheetBenchmark {
    private static final int PLATES = 500;
    private static final List<String> NAMES = List.of("Maren Oksavik", "Tobias Fennimore", "Aoife Keating");

    /** Laid out and written, one plate after the other. */
    @Benchmark
    public long fiveHundredPlates() throws IOException {
        RunSheetWriter sheet = new RunSheetWriter();
        long[] characters = new long[1];
        Writer out = new CountingWriter(characters);
        for (int plate = 1; plate <= PLATES; plate++) {
            sheet.plate(out, SampleSheet.tray(plate, SampleSheet.FIRST_ITEM + 17 * plate, NAMES));
        }
        return characters[0];
    }

    private static final class CountingWriter extends Writer {
        private final long[] characters;

        CountingWriter(long[] characters) {
            this.characters = characters;
        }

        @Override
        public void write(char[] text, int from, int count) {
            characters[0] += count;
        }

        @Override
        public void flush() {
            // Nothing is held.
        }

        @Override
        public void close() {
            // Nothing is held.
        }
    }
}
