package dev.quoin.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Assumptions;

/** A headless Chromium: what others' code makes of our files. Tests that need it are skipped where it is not installed. */
public final class Chromium {
    private static final Path PROGRAM = Path.of("/usr/bin/chromium");
    private static final int PATIENCE_S = 180;

    private final Path folder;

    /**
     * A browser with nothing remembered.
     *
     * @param folder for pages, pictures and the browser's own files
     */
    public Chromium(Path folder) {
        Assumptions.assumeTrue(Files.isExecutable(PROGRAM), "skipped: no Chromium at " + PROGRAM);
        this.folder = folder;
    }

    /** A picture of a page, one pixel a CSS px. */
    public BufferedImage picture(Path page, int width, int height) throws IOException, InterruptedException {
        Path picture = Files.createTempFile(folder, "picture", ".png");
        browse(
                "--hide-scrollbars",
                "--force-device-scale-factor=1",
                "--window-size=" + width + "," + height,
                "--screenshot=" + picture,
                page.toUri().toString());
        return ImageIO.read(picture.toFile());
    }

    /** A page as it stands once its scripts have run. */
    public String dom(String html) throws IOException, InterruptedException {
        return Files.readString(browse("--virtual-time-budget=20000", "--dump-dom", page(html)));
    }

    /** The same, on the clock of this machine. */
    public String domInRealTime(String html) throws IOException, InterruptedException {
        return Files.readString(browse("--dump-dom", page(html)));
    }

    /** A page printed as PDF. */
    public Path print(String html) throws IOException, InterruptedException {
        Path pdf = Files.createTempFile(folder, "print", ".pdf");
        browse("--no-pdf-header-footer", "--print-to-pdf=" + pdf, page(html));
        return pdf;
    }

    private String page(String html) throws IOException {
        return Files.writeString(Files.createTempFile(folder, "page", ".html"), html)
                .toUri()
                .toString();
    }

    private Path browse(String... options) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                PROGRAM.toString(),
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
        Path out = Files.createTempFile(folder, "out", ".txt");
        Process process = new ProcessBuilder(command)
                .redirectOutput(out.toFile())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        if (!process.waitFor(PATIENCE_S, TimeUnit.SECONDS)) {
            process.destroyForcibly();
        }
        assertEquals(0, process.waitFor(), "Chromium's exit status");
        return out;
    }
}
