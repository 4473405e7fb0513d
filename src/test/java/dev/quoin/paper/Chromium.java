package dev.quoin.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;

/** A headless browser, and poppler's readers of what it prints, each run as a program of its own. */
final class Chromium {
    private static final int PATIENCE_S = 120;

    private final Path folder;

    /** @param folder for pages, prints and the browser's own files */
    Chromium(Path folder) {
        this.folder = folder;
        for (String program : List.of("chromium", "pdfinfo", "pdftotext")) {
            Assumptions.assumeTrue(
                    Files.isExecutable(Path.of("/usr/bin", program)), "skipped: no " + program + " on this machine");
        }
    }

    /** The page as it stands once its scripts have run. */
    String dom(String html) throws IOException, InterruptedException {
        Path page = Files.writeString(Files.createTempFile(folder, "page", ".html"), html);
        return browse("--virtual-time-budget=20000", "--dump-dom", page.toUri().toString());
    }

    /** The page printed as PDF. */
    Path print(String html) throws IOException, InterruptedException {
        Path page = Files.writeString(Files.createTempFile(folder, "page", ".html"), html);
        Path pdf = folder.resolve(page.getFileName() + ".pdf");
        browse("--no-pdf-header-footer", "--print-to-pdf=" + pdf, page.toUri().toString());
        assertTrue(Files.size(pdf) > 0);
        return pdf;
    }

    /** The text of each page of a PDF. */
    List<String> text(Path pdf) throws IOException, InterruptedException {
        String all = run(List.of("/usr/bin/pdftotext", "-layout", pdf.toString(), "-"));
        return List.of(all.split("\f"));
    }

    /** What {@code pdfinfo} says of a PDF. */
    String info(Path pdf) throws IOException, InterruptedException {
        return run(List.of("/usr/bin/pdfinfo", pdf.toString()));
    }

    private String browse(String... options) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                "/usr/bin/chromium",
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--user-data-dir=" + Files.createTempDirectory(folder, "profile")));
        command.addAll(List.of(options));
        return run(command);
    }

    private String run(List<String> command) throws IOException, InterruptedException {
        Path out = Files.createTempFile(folder, "out", ".txt");
        Process process = new ProcessBuilder(command)
                .redirectOutput(out.toFile())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        if (!process.waitFor(PATIENCE_S, TimeUnit.SECONDS)) {
            process.destroyForcibly();
        }
        assertEquals(0, process.waitFor(), command.get(0));
        try (InputStream in = Files.newInputStream(out)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
