package dev.quoin.format;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.browser.PdfContent;
import dev.quoin.browser.Poppler;
import dev.quoin.cli.Quoin;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Given the sample order of a harbour, its plate as PDF and DXF: what programs of others read from them, against what
 * Batik reads from the SVG. Poppler reads the PDF, ezdxf the DXF.
 */
class OtherKindsTest {
    private static final double FIELD = 200;
    private static final double TOLERANCE = 0.01;

    @TempDir
    private static Path folder;

    private static List<SvgPieces> svg;

    @BeforeAll
    static void prepare() throws Exception {
        prepare("run");
        svg = SvgPieces.of(Files.readString(folder.resolve("run/plate-001.svg")), new AffineTransform());
        assertTrue(svg.size() > 1000, svg.size() + " pieces in the SVG");
    }

    private static void prepare(String out) {
        StringWriter said = new StringWriter();
        PrintWriter print = new PrintWriter(said, true);
        String job = Path.of("sample-orders/harbour-tags").toAbsolutePath().toString();
        int status =
                new Quoin(print, print, folder, false).run("prepare", job, "--plate-format", "pdf,dxf", "--out", out);
        assertEquals(0, status, said.toString());
    }

    @Test
    void thePdfIsOnePageOfTheFieldsSize() throws Exception {
        String info = Poppler.info(folder.resolve("run/plate-001.pdf"));
        Matcher size = Pattern.compile("Page size: +([0-9.]+) x ([0-9.]+) pts").matcher(info);
        assertTrue(size.find(), info);
        assertEquals(FIELD * 72 / 25.4, Double.parseDouble(size.group(1)), 0.001);
        assertEquals(FIELD * 72 / 25.4, Double.parseDouble(size.group(2)), 0.001);
        assertTrue(info.contains("Pages:           1\n"), info);
        assertFalse(info.contains("Date"), info);
    }

    /** Cairo writes coordinates in steps of 1/256 pt, 0.0014 mm, so that it tells bounds; lengths are told below. */
    @Test
    void thePdfHasTheSamePathsAndNothingElse() throws Exception {
        String read = Files.readString(Poppler.svg(folder.resolve("run/plate-001.pdf")));
        assertFalse(Pattern.compile("<(image|text|use|symbol|mask)\\b")
                .matcher(read)
                .find());
        double mm = 25.4 / 72;
        List<SvgPieces> pdf = SvgPieces.of(read, AffineTransform.getScaleInstance(mm, mm));
        assertEquals(svg.size(), pdf.size(), "pieces");
        for (int i = 0; i < svg.size(); i++) {
            assertBounds(svg.get(i).bounds(), pdf.get(i).bounds(), "piece " + i);
        }
        assertTrue(read.contains("C "), "curves are kept");
    }

    /** Its operators {@code m l c h} (ISO 32000-1, 8.5.2) are those of path data. */
    @Test
    void thePdfsPathsAreAsLong() throws Exception {
        String pdf = PdfContent.of(folder.resolve("run/plate-001.pdf"));
        List<SvgPieces> read = new ArrayList<>();
        StringBuilder path = new StringBuilder();
        Matcher operator =
                Pattern.compile("\n((?:-?[0-9.]+ )*)(m|l|c|h|f|f\\*|S)(?=\n)").matcher(pdf);
        while (operator.find()) {
            String verb = operator.group(2).toUpperCase(Locale.ROOT);
            if ("MLCH".contains(verb)) {
                path.append(verb.replace('H', 'Z')).append(operator.group(1));
            } else {
                read.addAll(SvgPieces.of("<path d=\"" + path + "\"/>", new AffineTransform()));
                path.setLength(0);
            }
        }
        assertEquals(svg.size(), read.size(), "pieces");
        for (int i = 0; i < svg.size(); i++) {
            assertEquals(svg.get(i).length(), read.get(i).length(), TOLERANCE, "length of piece " + i);
        }
    }

    @Test
    void thePdfHasALayerForEachStep() throws Exception {
        String pdf = Files.readString(folder.resolve("run/plate-001.pdf"), StandardCharsets.ISO_8859_1);
        for (String step : List.of("step-1-engrave", "step-2-outline", "step-3-cut")) {
            assertTrue(pdf.contains("/Type /OCG\n/Name (" + step + ")"), step);
        }
    }

    @Test
    void theDxfHasTheSamePiecesOnALayerForEachStep() throws Exception {
        List<String> lines = ezdxf(folder.resolve("run/plate-001.dxf"));
        assertEquals("AC1009 0 0", lines.get(0), "release, errors, repairs");
        assertEquals(svg.size(), lines.size() - 1, "pieces");
        for (int i = 0; i < svg.size(); i++) {
            String[] line = lines.get(i + 1).split(" ");
            assertEquals(svg.get(i).group(), line[0]);
            assertEquals(svg.get(i).length(), Double.parseDouble(line[2]), TOLERANCE, "length of piece " + i);
            double[] at = new double[4];
            for (int k = 0; k < 4; k++) {
                at[k] = Double.parseDouble(line[3 + k]);
            }
            Rectangle2D inPage =
                    new Rectangle2D.Double(at[0] + FIELD / 2, FIELD / 2 - at[3], at[2] - at[0], at[3] - at[1]);
            assertBounds(svg.get(i).bounds(), inPage, "piece " + i);
        }
    }

    @Test
    void theSameJobGivesTheSameBytesElsewhere() throws Exception {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            prepare("elsewhere");
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
        for (String kind : List.of("pdf", "dxf")) {
            byte[] here = Files.readAllBytes(folder.resolve("run/plate-001." + kind));
            assertArrayEquals(here, Files.readAllBytes(folder.resolve("elsewhere/plate-001." + kind)), kind);
        }
    }

    @Test
    void theManifestListsThemAndTheListOfPlatesNamesTheSvgAlone() throws Exception {
        String manifest = Files.readString(folder.resolve("run/manifest.csv"));
        assertTrue(manifest.contains("\nplate-001.pdf,") && manifest.contains("\nplate-001.dxf,"), manifest);
        List<String> plates = Files.readAllLines(folder.resolve("run/plates.csv"));
        assertEquals(2, plates.size());
        assertTrue(plates.get(1).startsWith("1,1,plate-001.svg,"), plates.get(1));
    }

    private static void assertBounds(Rectangle2D expected, Rectangle2D found, String what) {
        assertEquals(expected.getMinX(), found.getMinX(), TOLERANCE, what + ": left");
        assertEquals(expected.getMinY(), found.getMinY(), TOLERANCE, what + ": top");
        assertEquals(expected.getMaxX(), found.getMaxX(), TOLERANCE, what + ": right");
        assertEquals(expected.getMaxY(), found.getMaxY(), TOLERANCE, what + ": bottom");
    }

    /** Debian's python3-ezdxf; skipped where it is not installed. */
    private static List<String> ezdxf(Path dxf) throws Exception {
        Path script = folder.resolve("polylines.py");
        try (InputStream in = OtherKindsTest.class.getResourceAsStream("polylines.py")) {
            Files.write(script, in.readAllBytes());
        }
        Path python = Path.of("/usr/bin/python3");
        Assumptions.assumeTrue(Files.isExecutable(python), "skipped: no " + python);
        Process installed = new ProcessBuilder(python.toString(), "-c", "import ezdxf")
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        Assumptions.assumeTrue(installed.waitFor() == 0, "skipped: no ezdxf (Debian: python3-ezdxf)");
        Process process = new ProcessBuilder(new ArrayList<>(List.of(python.toString(), script.toString(), dxf + "")))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), out);
        return out.lines().toList();
    }
}
