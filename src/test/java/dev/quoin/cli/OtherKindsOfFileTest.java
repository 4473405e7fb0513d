package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.browser.PdfContent;
import dev.quoin.cli.Program.Ended;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Plates as PDF and DXF and sheets as PDF, wherever plates and sheets are written: runs, their extensions, reprints. */
class OtherKindsOfFileTest {
    private static final String[] ALL = {"--plate-format", "pdf,dxf", "--sheet", "html,pdf"};

    @TempDir
    private Path folder;

    private Program quoin;
    private Path run;

    @BeforeEach
    void given() throws IOException {
        Path job = SmallJob.in(folder).folder();
        quoin = new Program(job);
        run = job.resolve("run");
    }

    private void prepare(String... more) {
        assertDone(command("prepare", ".", "--out", "run"), more);
    }

    private void assertDone(String[] command, String... more) {
        Ended ended = quoin.run(join(command, more));
        assertEquals(0, ended.status(), ended.err());
    }

    private static String[] command(String... words) {
        return words;
    }

    private static String[] join(String[] first, String[] second) {
        return Stream.of(first, second).flatMap(Stream::of).toArray(String[]::new);
    }

    private void assertThere(String... names) throws IOException {
        for (String name : names) {
            assertTrue(Files.size(run.resolve(name)) > 500, name);
        }
    }

    @Test
    void aRunHasThemAndItsManifestListsThem() throws IOException {
        prepare(ALL);
        assertThere("plate-001.pdf", "plate-003.dxf", "run-sheet.pdf", "run-sheet.html");
        String manifest = Files.readString(run.resolve("manifest.csv"));
        for (String name : List.of("plate-001.pdf", "plate-001.dxf", "run-sheet.pdf")) {
            assertTrue(manifest.contains("\n" + name + ","), manifest);
        }
        assertDone(command("verify", "run"));
    }

    @Test
    void aPdfLooksForNoFontOfTheMachineAndKeepsNoListOfThem(@TempDir Path home) throws Exception {
        List<String> options = List.of(
                "-Dpdfbox.fontcache=" + home,
                // As where the program runs alone: the tests' libraries bring another log, which is silent.
                "-Dorg.apache.commons.logging.LogFactory=org.apache.commons.logging.impl.LogFactoryImpl",
                "-Dorg.apache.commons.logging.Log=org.apache.commons.logging.impl.Jdk14Logger");
        Process process = JavaProcess.start(
                run.getParent(), options, join(command("prepare", ".", "--quiet", "--out", "run"), ALL));
        assertTrue(process.waitFor(2, TimeUnit.MINUTES));
        assertThere("run-sheet.pdf");
        String said = Files.readString(run.resolveSibling("said.txt"));
        assertFalse(said.contains("font"), said);
        try (Stream<Path> left = Files.list(home)) {
            assertEquals(List.of(), left.toList());
        }
    }

    @Test
    void theSummaryNamesEachKindOfSheet() {
        Ended told = quoin.run(join(command("prepare", ".", "--out", "run"), ALL));
        assertTrue(told.out().contains("run/run-sheet.html or run/run-sheet.pdf"), told.out());
        Ended json = quoin.run("prepare", ".", "--out", "run", "--replace", "--json");
        assertTrue(json.out().contains("\"sheets\":[\"run-sheet.html\"],"), json.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"plate-002.pdf", "plate-001.dxf", "run-sheet.pdf"})
    void aFlippedByteInOneOfThemIsFound(String name) throws IOException {
        prepare(ALL);
        byte[] whole = Files.readAllBytes(run.resolve(name));
        for (int at : List.of(0, whole.length / 2, whole.length - 2)) {
            byte[] changed = whole.clone();
            changed[at] ^= 1;
            Files.write(run.resolve(name), changed);
            Ended ended = quoin.run("verify", "run");
            assertEquals(1, ended.status(), name + " at " + at);
            assertTrue(ended.err().contains(name), ended.err());
        }
    }

    @Test
    void withAFileForEachStepThereIsOneOfEachKindForEachStep() throws IOException {
        prepare(join(ALL, command("--split-steps")));
        for (String step : List.of("step-1-engrave", "step-2-outline")) {
            assertThere("plate-001-" + step + ".svg", "plate-001-" + step + ".pdf", "plate-001-" + step + ".dxf");
            String dxf = Files.readString(run.resolve("plate-001-" + step + ".dxf"));
            assertTrue(dxf.contains("\n8\n" + step + "\n"), "its layer");
        }
        assertFalse(
                Files.readString(run.resolve("plate-001-step-1-engrave.dxf")).contains("step-2-outline"));
        assertDone(command("verify", "run"));
    }

    /** Open lines, each of two points: 240 mm of them fill a square millimetre at 0.05 mm, and no area is left to be filled. */
    @Test
    void hatchedPlatesHoldLinesInEveryKind() throws IOException {
        prepare(join(ALL, command("--hatched")));
        String pdf = PdfContent.of(run.resolve("plate-001.pdf"));
        assertTrue(pdf.contains("\nS\n"), "paths are stroked");
        assertFalse(pdf.contains("\nf\n") || pdf.contains("\nf*\n"), "nothing is filled");
        String svg = Files.readString(run.resolve("plate-001.svg"));
        String lines = svg.substring(svg.indexOf("step-1-engrave"), svg.indexOf("step-2-outline"));
        int strokes = lines.split("M[0-9]", -1).length - 1;
        String dxf = Files.readString(run.resolve("plate-001.dxf"));
        assertEquals(strokes, dxf.split("POLYLINE\n8\nstep-1-engrave\n", -1).length - 1);
        assertTrue(strokes > 500, strokes + " strokes");
    }

    /** A path of no length is a stroke that the beam stands still for: it is in the time, and so in each kind of file. */
    @Test
    void aDotOfThePathIsAPointOfTheDxfAndOfItsReprint() throws IOException {
        Path template = run.resolveSibling("tag.svg");
        String drawing = Files.readString(template);
        Files.writeString(
                template,
                drawing.replace("</svg>", "<path class='outline' d='M3 2h0M5 2h1' fill='none' stroke='#000'/></svg>"));
        prepare(ALL);
        String item = Files.readAllLines(run.resolve("items.csv")).get(1);
        double x = Double.parseDouble(item.split(",")[6]) + 3 - 10;
        double y = Double.parseDouble(item.split(",")[7]) + 5 - 2;
        String point = "\nPOINT\n8\nstep-2-outline\n10\n%s\n20\n%s\n30\n0\n".formatted(number(x), number(y));
        String dxf = Files.readString(run.resolve("plate-001.dxf"));
        assertTrue(dxf.contains(point), point);
        assertEquals(3, dxf.split("\nPOINT\n", -1).length - 1, "one for each item");
        assertTrue(Files.readString(run.resolve("plate-001.svg"))
                .contains("M%s %sL%1$s %2$s".formatted(number(x + 50), number(50 - y))));
        assertDone(command("reprint", "run", "--item", "1"));
        assertTrue(Files.readString(run.resolve("reprints/reprint-001.dxf")).contains(point), "the same again");
        assertDone(command("verify", "run"));
    }

    private static String number(double mm) {
        return BigDecimal.valueOf(mm)
                .setScale(3, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    @Test
    void anExtensionHasTheKindsOfItsRun() throws IOException {
        prepare(ALL);
        Files.writeString(run.resolveSibling("new.csv"), SmallJob.HEADER + SmallJob.ROWS + "Fay,blue,1\n");
        assertDone(command("extend", "run", "new.csv"));
        assertThere("plate-004.svg", "plate-004.pdf", "plate-004.dxf", "run-sheet-2.html", "run-sheet-2.pdf");
        assertDone(command("verify", "run"));
    }

    @Test
    void aReprintHasTheKindsOfItsRun() throws IOException {
        prepare(ALL);
        assertDone(command("reprint", "run", "--plate", "2"));
        assertThere("reprints/reprint-001.dxf", "reprints/reprint-001.sheet.pdf", "reprints/reprint-001.html");
        String again = Files.readString(run.resolve("reprints/reprint-001.dxf"));
        assertEquals(polylines(Files.readString(run.resolve("plate-002.dxf"))), polylines(again));
        String pdf = Files.readString(run.resolve("reprints/reprint-001.pdf"), StandardCharsets.ISO_8859_1);
        assertTrue(pdf.contains("/Name (step-2-outline)"), "a layer for each step");
        assertDone(command("verify", "run"));
    }

    /** How many there are on each layer. */
    private static Map<String, Integer> polylines(String dxf) {
        Map<String, Integer> found = new TreeMap<>();
        Matcher line = Pattern.compile("\nPOLYLINE\n8\n(.*)\n").matcher(dxf);
        while (line.find()) {
            found.merge(line.group(1), 1, Integer::sum);
        }
        return found;
    }

    @Test
    void orThoseThatItIsAskedFor() throws IOException {
        prepare();
        assertDone(command("reprint", "run", "--item", "5", "--plate-format", "dxf", "--sheet", "pdf"));
        assertThere("reprints/reprint-001.svg", "reprints/reprint-001.dxf", "reprints/reprint-001.sheet.pdf");
        assertFalse(Files.exists(run.resolve("reprints/reprint-001.pdf")));
        Ended ended = quoin.run("reprint", "run", "--item", "5", "--plate-format", "dfx");
        assertEquals(1, ended.status());
        assertEquals(
                "--plate-format: plates cannot be written as 'dfx'; did you mean 'dxf'?\n",
                ended.err().replace("\r", ""));
    }

    @Test
    void theSheetOfAReprintHasACodeForAScanner() throws IOException {
        prepare();
        assertDone(command("reprint", "run", "--item", "5"));
        String sheet = Files.readString(run.resolve("reprints/reprint-001.html"));
        assertTrue(sheet.contains("aria-label=\"For a scanner: run/reprint-001\""), sheet);
    }

    @Test
    void aKindOfSheetThatThereIsNotIsTold() {
        Ended ended = quoin.run("prepare", ".", "--out", "run", "--sheet", "html,pfd");
        assertEquals(1, ended.status());
        assertTrue(
                ended.err().contains("--sheet: a sheet cannot be written as 'pfd'; did you mean 'pdf'?"), ended.err());
    }

    /** The library that lays out PDF pages costs start time, which nobody who wants none should pay. */
    @Test
    void withoutAPdfNothingOfItsLayoutIsLoaded() throws Exception {
        Process process = JavaProcess.start(
                run.getParent(), List.of("-Xlog:class+load:file=classes.txt"), "prepare", ".", "--out", "run");
        assertTrue(process.waitFor(60, TimeUnit.SECONDS));
        assertEquals(0, process.exitValue());
        String classes = Files.readString(run.resolveSibling("classes.txt"));
        assertTrue(classes.contains("dev.quoin.paper.RunSheetWriter"));
        assertFalse(classes.contains("openhtmltopdf"));
        assertFalse(classes.contains("org.apache.pdfbox"));
    }
}
