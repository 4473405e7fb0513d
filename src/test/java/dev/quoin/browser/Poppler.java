package dev.quoin.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assumptions;

/** Poppler's readers of PDF files. Tests that need them are skipped where they are not installed. */
public final class Poppler {
    private static final Pattern WORD =
            Pattern.compile("<word xMin=\"([0-9.-]+)\" yMin=\"([0-9.-]+)\" xMax=\"([0-9.-]+)\" yMax=\"([0-9.-]+)\">");

    private Poppler() {}

    /** The text of each page of a PDF. */
    public static List<String> text(Path pdf) throws IOException, InterruptedException {
        return List.of(run("pdftotext", "-layout", pdf.toString(), "-").split("\f"));
    }

    /** The box around each word: left, top, right and bottom from the page's upper left, points. */
    public static List<double[]> words(Path pdf) throws IOException, InterruptedException {
        List<double[]> words = new ArrayList<>();
        Matcher word = WORD.matcher(run("pdftotext", "-bbox", pdf.toString(), "-"));
        while (word.find()) {
            words.add(new double[] {
                Double.parseDouble(word.group(1)),
                Double.parseDouble(word.group(2)),
                Double.parseDouble(word.group(3)),
                Double.parseDouble(word.group(4))
            });
        }
        return words;
    }

    /** What {@code pdfinfo} says of a PDF. */
    public static String info(Path pdf) throws IOException, InterruptedException {
        return run("pdfinfo", pdf.toString());
    }

    /** A page of a PDF as a PNG file, {@code dpi} pixels to the inch. */
    public static Path picture(Path pdf, int page, int dpi) throws IOException, InterruptedException {
        String name = pdf.toString() + "-" + page;
        String number = Integer.toString(page);
        run("pdftoppm", "-r", Integer.toString(dpi), "-f", number, "-l", number, "-singlefile", "-png", pdf + "", name);
        return Path.of(name + ".png");
    }

    /** A PDF of one page as an SVG file, not shrunk to whole points as it would be without being told. */
    public static Path svg(Path pdf) throws IOException, InterruptedException {
        Path svg = Path.of(pdf + ".svg");
        run("pdftocairo", "-svg", "-noshrink", "-nocenter", pdf.toString(), svg.toString());
        return svg;
    }

    private static String run(String program, String... arguments) throws IOException, InterruptedException {
        Path path = Path.of("/usr/bin", program);
        Assumptions.assumeTrue(Files.isExecutable(path), "skipped: no " + path);
        List<String> command = new ArrayList<>(List.of(path.toString()));
        command.addAll(List.of(arguments));
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), program);
        return out;
    }
}
