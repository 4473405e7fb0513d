package dev.quoin.job;

import dev.quoin.lettering.FontLibrary;
import dev.quoin.paper.PlateView;
import dev.quoin.paper.SampleSheet;
import dev.quoin.paper.SheetFoot;
import dev.quoin.problem.Problems;
import dev.quoin.store.RunFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Seconds for the run sheet of 500 plates, 17 items each, by a program just started (no warm-up), as a run writes it: the
 * blocks laid out plate after plate and put aside, then head, blocks and foot as the file, encoded and digested. Bar: under
 * 1 s.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(5)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
public class RunSheetBenchmark {
    private static final int PLATES = 500;
    private static final List<String> NAMES = List.of("Maren Oksavik", "Tobias Fennimore", "Aoife Keating");

    /** On how many threads the blocks are laid out; the program takes as many as there are processors. */
    @Param({"1", "2"})
    public int threads;

    private Path parent;
    private Path out;
    private RunFolder folder;
    private FontLibrary fonts;

    /** Begins the run, which the sheet does not wait for. */
    @Setup
    public void begin() throws IOException {
        parent = Files.createTempDirectory("run-sheet");
        out = parent.resolve("run");
        folder = RunFolder.begin(out, false);
        fonts = FontLibrary.open(List.of(), false, new Problems());
    }

    /** All of the sheet. */
    @Benchmark
    public List<String> fiveHundredPlates() throws IOException {
        List<PlateView> plates = new ArrayList<>();
        List<Integer> numbers = IntStream.rangeClosed(1, PLATES).boxed().toList();
        try (RunSheets sheets = new RunSheets(folder, "long", false, fonts);
                InOrder inOrder = new InOrder(threads)) {
            inOrder.run(InOrder.each(numbers), Laid::of, laid -> {
                sheets.plate(laid.plate, laid.block);
                plates.add(laid.plate);
            });
            return sheets.write(
                    UnaryOperator.identity(),
                    SampleSheet.head("long", plates, List.of(), List.of()),
                    new SheetFoot(List.of()));
        }
    }

    /** Says how long the file is, and what is asked, and leaves nothing. */
    @TearDown
    public void end() throws IOException {
        folder.publish();
        folder.close();
        Path sheet = out.resolve("run-sheet.html");
        System.out.printf("[%,d bytes; bar: under 1 s] ", Files.size(sheet));
        for (Path path : List.of(sheet, out.resolve(RunFolder.MANIFEST), out, parent)) {
            Files.delete(path);
        }
    }

    private record Laid(PlateView plate, String block) {
        static Laid of(int number) throws IOException {
            PlateView plate = SampleSheet.tray(number, SampleSheet.FIRST_ITEM + 17 * number, NAMES);
            return new Laid(plate, RunSheets.block(plate));
        }
    }
}
