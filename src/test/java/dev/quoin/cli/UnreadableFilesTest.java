package dev.quoin.cli;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Given files that cannot be read, or a place that cannot be written to, then one line names it, and nothing is written. */
class UnreadableFilesTest {
    @TempDir
    Path folder;

    static Stream<BadJob> jobs() {
        return Stream.of(
                BadJob.of(
                        "no order",
                        job -> job.folderInPlaceOf("order.csv"),
                        "DIR/job/order.csv: a folder stands where the order is expected; check its name"),
                BadJob.of(
                        "a template that is a folder",
                        job -> job.folderInPlaceOf("tag.svg"),
                        "DIR/job/tag.svg: a folder stands where the template is expected; check its name"),
                BadJob.of(
                        "a jig that is a folder",
                        job -> job.folderInPlaceOf("tray.csv"),
                        "DIR/job/tray.csv: a folder stands where the jig is expected; check its name"),
                BadJob.of(
                        "settings that are a folder",
                        job -> job.folderInPlaceOf("job.properties"),
                        "DIR/job/job.properties: a folder stands where the settings are expected; check its name"),
                BadJob.of(
                        "no template",
                        job -> job.set("template", "tga.svg"),
                        "DIR/job/tga.svg: there is no such template; check its name"),
                BadJob.of(
                        "no jig",
                        job -> job.set("jig", "try.csv"),
                        "DIR/job/try.csv: there is no such jig; check its name"),
                BadJob.of(
                        "no shop",
                        job -> job.set("shop", "our-shop"),
                        "DIR/job/our-shop: there is no such shop folder; check its name"),
                BadJob.of(
                        "no fonts",
                        job -> job.set("fonts", "our-fonts"),
                        "DIR/job/our-fonts: there is no such file or folder; check the name"),
                BadJob.of(
                        "a shop that is a file",
                        job -> job.set("shop", "tray.csv"),
                        "DIR/job/tray.csv: there is no such shop folder; check its name"),
                BadJob.of(
                        "an output below a file",
                        job -> job.set("out", "tray.csv/run"),
                        "DIR/job/tray.csv: a file, where a folder is to hold the run; choose another with --out"),
                BadJob.of(
                        "an output that exists",
                        job -> job.set("out", "../job"),
                        "DIR/job: it exists already; choose another with --out, or give --replace"),
                BadJob.with(
                        "a folder that is no run",
                        "--out job --replace",
                        "DIR/job: it is not a run folder, so --replace leaves it alone; choose another with --out"));
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void endsWithStatus3AndWritesNothing(BadJob job) throws Exception {
        job.check(folder, ExitStatus.ACCESS);
    }
}
