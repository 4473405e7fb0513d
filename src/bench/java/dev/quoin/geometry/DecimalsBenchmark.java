package dev.quoin.geometry;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Coordinates a second that the formatter writes, on one thread: numbers in a field of 200 mm, three decimals, a blank before each. */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
public class DecimalsBenchmark {
    private static final int COUNT = 4096;

    private final double[] values = new Random(1).doubles(COUNT, 0, 200).toArray();
    private final byte[] bytes = new byte[COUNT * 16 + Decimals.MOST_BYTES];

    /** One after another into the same bytes. */
    @Benchmark
    @OperationsPerInvocation(COUNT)
    public int put() {
        int at = 0;
        for (double value : values) {
            at = Decimals.coordinate(bytes, at, ' ', value);
        }
        return at;
    }
}
