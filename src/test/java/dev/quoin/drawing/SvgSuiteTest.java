package dev.quoin.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.quoin.art.SuiteLetters;
import dev.quoin.geometry.Area;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Files of a public test suite: our marks cover what Chromium paints, in all files but those listed: 279 of 325 files,
 * 86 per cent, overlap by more than 0.99. Sources: shapes and
 * structure from github linebender/resvg, commit 08c79a31, test folders (Apache-2.0 OR MIT), under {@code quoin.cases};
 * painting, clipping and text from github RazrFalcon/resvg-test-suite (MIT), in the test's own resources. The files
 * have no real size, so each is given one; the fonts that they name are not free or not everywhere, so all letters are
 * set in DejaVu Sans, by Chromium too.
 */
@Tag("browser")
class SvgSuiteTest {
    private static final double LEAST_OVERLAP = 0.99;
    /** Less is no matter of the smoothing of edges. */
    private static final double NEAR = 0.9;

    private static final Path OWN = Path.of("src/test/resources/dev/quoin/svg-suite");

    /** Where we differ on purpose: we say what is wrong and draw nothing of it, since half a shape spoils a blank. */
    private static final Map<String, String> DIFFERENCES = new TreeMap<>(Map.ofEntries(
            Map.entry("ellipse/negative-rx-attribute", "a size below 0 is an error"),
            Map.entry("ellipse/negative-ry-attribute", "a size below 0 is an error"),
            Map.entry("path/invalid-transform", "a bad transform is an error; a browser leaves it out"),
            Map.entry("rect/ch-values", "a unit of CSS 3 that depends on a font is an error"),
            Map.entry("rect/ex-values", "no font is loaded: ex is half an em (CSS 2.1, section 4.3.2)"),
            Map.entry("rect/ic-values", "a unit of CSS 4 that depends on a font is an error"),
            Map.entry("rect/invalid-coordinates", "a bad coordinate is an error; a browser takes 0"),
            Map.entry("rect/lh-values", "a unit of CSS 4 that depends on a font is an error"),
            Map.entry("rect/q-values", "quarter millimetres are an error"),
            Map.entry("rect/rem-values", "a unit of CSS 3 that depends on a font is an error"),
            Map.entry("rect/rlh-values", "a unit of CSS 4 that depends on a font is an error"),
            Map.entry("rect/vi-and-vb-values", "a unit that depends on a window is an error"),
            Map.entry("rect/vmin-and-vmax-values", "a unit that depends on a window is an error"),
            Map.entry("rect/vw-and-vh-values", "a unit that depends on a window is an error"),
            Map.entry("g/recursive-inheritance", "a gradient is an error"),
            Map.entry("style-attribute/non-presentational-attribute", "a size in a style (SVG 2) is an error"),
            Map.entry("style-attribute/transform", "a transform in a style (SVG 2) is an error"),
            Map.entry("style/external-CSS", "no style sheet of another file is read: an error"),
            Map.entry("style/non-presentational-attribute", "a size in a style (SVG 2) is an error"),
            Map.entry("style/transform", "a transform in a style (SVG 2) is an error"),
            Map.entry("svg/background-color", "the colour of the page is not marked"),
            Map.entry("svg/background-color-with-viewbox", "the colour of the page is not marked"),
            Map.entry("svg/nested-svg-with-transform-and-clip", "a transform on a nested svg (SVG 2) is an error"),
            Map.entry("svg/nested-svg-with-transform-and-opacity", "what is see-through is an error"),
            Map.entry("svg/not-UTF-8-encoding", "Windows-1251, which Chromium does not read, and we do"),
            Map.entry("svg-suite/a-display-002", "a gradient is an error"),
            Map.entry("svg-suite/e-text-006", "a place for each letter is an error"),
            Map.entry("svg-suite/e-text-014", "letters turned one by one are an error"),
            Map.entry(
                    "svg-suite/e-textPath-001",
                    "along a path Chromium's letters of 24 mm stand some 0.05 mm elsewhere; Batik's where ours do"),
            Map.entry("symbol/opacity-on-symbol", "what is see-through is an error"),
            Map.entry("symbol/opacity-on-symbol-with-viewBox", "what is see-through is an error"),
            Map.entry("symbol/opacity-on-use", "what is see-through is an error"),
            Map.entry("symbol/opacity-on-use-and-symbol", "what is see-through is an error"),
            Map.entry("symbol/with-size-on-use-and-relative-units", "a raster picture is an error"),
            Map.entry("symbol/with-transform", "a transform on a symbol (SVG 2) is an error"),
            Map.entry("use/complex-style-resolving-order", "a gradient is an error"),
            Map.entry("use/fill-opacity-inheritance", "what is see-through is an error"),
            Map.entry(
                    "use/indirect-recursive-1", "a use that leads back to itself is an error; a browser leaves it out"),
            Map.entry(
                    "use/indirect-recursive-2", "a use that leads back to itself is an error; a browser leaves it out"),
            Map.entry(
                    "use/indirect-recursive-3", "a use that leads back to itself is an error; a browser leaves it out"),
            Map.entry("use/nested-recursive-1", "a use that leads back to itself is an error; a browser leaves it out"),
            Map.entry("use/nested-recursive-2", "a use that leads back to itself is an error; a browser leaves it out"),
            Map.entry("use/opacity-inheritance", "what is see-through is an error"),
            Map.entry("use/recursive", "a use that leads back to itself is an error; a browser leaves it out"),
            Map.entry("use/self-recursive", "a use that leads back to itself is an error; a browser leaves it out"),
            Map.entry("use/stroke-opacity-inheritance", "what is see-through is an error")));

    /** Of those, the ones that are drawn, in another way. */
    private static final Set<String> SILENT = Set.of(
            "rect/ex-values",
            "svg/background-color",
            "svg/background-color-with-viewbox",
            "svg/not-UTF-8-encoding",
            "svg-suite/e-textPath-001");

    @TempDir
    private Path folder;

    @Test
    void ourMarksCoverWhatChromiumPaints() throws IOException, InterruptedException {
        String cases = System.getProperty("quoin.cases", "");
        Path suite = Path.of(cases, "svg-suite");
        assumeTrue(!cases.isEmpty() && Files.isDirectory(suite), "skipped: no svg-suite under quoin.cases");
        List<Path> files = Stream.of(suite, OWN).flatMap(SvgSuiteTest::files).toList();
        List<byte[]> drawings = new ArrayList<>();
        List<List<Area>> ours = new ArrayList<>();
        List<Problems> problems = new ArrayList<>();
        for (Path file : files) {
            drawings.add(sized(file));
            problems.add(new Problems());
            ours.add(ours(drawings.get(ours.size()), problems.get(ours.size())));
        }
        List<String> failures = new ArrayList<>();
        Set<String> different = new TreeSet<>();
        for (Map.Entry<Integer, Double> less :
                overlappingLess(files, drawings, ours).entrySet()) {
            String name = name(files.get(less.getKey()));
            Problems told = problems.get(less.getKey());
            different.add(name);
            boolean isTold = told.hasErrors() || SILENT.contains(name);
            if (!isTold || !DIFFERENCES.containsKey(name)) {
                failures.add(name + " overlaps by " + less.getValue() + " " + told.sorted());
            }
        }
        assertEquals(List.of(), failures);
        assertEquals(325, files.size());
        assertEquals(DIFFERENCES.keySet(), different, "the differences listed are those that are");
    }

    /**
     * The drawings by number, with their overlap; those that are near the bar, or should be above it, are looked at again,
     * finely: now and then a browser takes the picture of a large page before all of it is painted.
     */
    private Map<Integer, Double> overlappingLess(List<Path> files, List<byte[]> drawings, List<List<Area>> ours)
            throws IOException, InterruptedException {
        Coverage chromium = Coverage.byChromium(drawings, folder);
        Map<Integer, Double> less = new TreeMap<>();
        List<Integer> near = new ArrayList<>();
        for (int i = 0; i < drawings.size(); i++) {
            double overlap = chromium.overlap(i, Coverage.filled(ours.get(i)));
            if (overlap < LEAST_OVERLAP) {
                less.put(i, overlap);
                if (overlap > NEAR || !DIFFERENCES.containsKey(name(files.get(i)))) {
                    near.add(i);
                }
            }
        }
        Coverage finer = Coverage.byChromium(near.stream().map(drawings::get).toList(), folder, Coverage.FINE_CELL);
        for (int k = 0; k < near.size(); k++) {
            double overlap = finer.overlap(k, Coverage.filled(ours.get(near.get(k)), Coverage.FINE_CELL));
            less.put(near.get(k), overlap);
        }
        less.values().removeIf(overlap -> overlap >= LEAST_OVERLAP);
        return less;
    }

    private static Stream<Path> files(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(file -> file.toString().endsWith(".svg")).sorted().toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The file's folder and its own name. */
    private static String name(Path file) {
        return file.subpath(file.getNameCount() - 2, file.getNameCount())
                .toString()
                .replace(".svg", "");
    }

    /** A drawing with an error is marked without its letters. */
    private static List<Area> ours(byte[] svg, Problems problems) {
        List<Area> areas = new ArrayList<>(Coverage.shapes(svg, ArtFolder.NONE, problems));
        if (!problems.hasErrors()) {
            areas.addAll(SuiteLetters.of(svg, problems));
        }
        return areas;
    }

    /** The file on a page 200 mm wide or high, in the proportion of its viewBox. */
    private static byte[] sized(Path file) throws IOException {
        // Bytes as they are: some files are in no known encoding.
        String svg = Files.readString(file, StandardCharsets.ISO_8859_1)
                .replaceAll("font-family=\"(Arial|Noto Sans)\"", "font-family=\"DejaVu Sans\"");
        String root = svg.substring(svg.indexOf("<svg"), svg.indexOf('>', svg.indexOf("<svg")));
        String plain = root.replaceAll("\\s(width|height)=\"[^\"]*\"", "");
        String[] box = attribute(root, "viewBox").orElse("0 0 " + size(root)).split("[ ,]+");
        double larger = Math.max(Double.parseDouble(box[2]), Double.parseDouble(box[3]));
        String size = " width='" + 200 * Double.parseDouble(box[2]) / larger + "mm' height='"
                + 200 * Double.parseDouble(box[3]) / larger + "mm'";
        String viewBox = plain.contains("viewBox=") ? "" : " viewBox='" + String.join(" ", box) + "'";
        return svg.replace(root, plain + size + viewBox).getBytes(StandardCharsets.ISO_8859_1);
    }

    private static String size(String root) {
        String number = "[0-9.]+";
        return attribute(root, "width").filter(w -> w.matches(number)).orElse("200") + " "
                + attribute(root, "height").filter(h -> h.matches(number)).orElse("200");
    }

    private static Optional<String> attribute(String tag, String name) {
        Matcher value = Pattern.compile("\\s" + name + "=\"([^\"]*)\"").matcher(tag);
        return value.find() ? Optional.of(value.group(1)) : Optional.empty();
    }
}
