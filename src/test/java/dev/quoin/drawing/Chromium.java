package dev.quoin.drawing;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;

/** A headless Chromium that takes a picture of a page. */
final class Chromium {
    private static final Path PROGRAM = Path.of("/usr/bin/chromium");

    private Chromium() {}

    static BufferedImage screenshot(Path page, Path folder, int width, int height)
            throws IOException, InterruptedException {
        assumeTrue(Files.isExecutable(PROGRAM), "skipped: no Chromium at " + PROGRAM);
        Path picture = folder.resolve("picture.png");
        Process process = new ProcessBuilder(List.of(
                        PROGRAM.toString(),
                        "--headless",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--disable-quic",
                        "--no-first-run",
                        "--disable-background-networking",
                        "--disable-component-update",
                        "--disable-sync",
                        "--hide-scrollbars",
                        "--force-device-scale-factor=1",
                        "--user-data-dir=" + folder.resolve("profile"),
                        "--window-size=" + width + "," + height,
                        "--screenshot=" + picture,
                        page.toUri().toString()))
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("chromium.log").toFile())
                .start();
        if (!process.waitFor(120, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IOException("Chromium took no picture within two minutes");
        }
        return ImageIO.read(picture.toFile());
    }
}
