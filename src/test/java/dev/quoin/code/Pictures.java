package dev.quoin.code;

import com.google.zxing.common.BitMatrix;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.FillRule;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Assumptions;

/** Codes drawn as pictures, for decoders that never saw how they were made. */
final class Pictures {
    private static final int PIXELS_PER_MM = 20;

    private Pictures() {}

    /** The marked area black on white, with white around the rectangle; an inverted one white on black. */
    static BufferedImage of(MadeCode code, double widthMm, double heightMm, boolean inverted) {
        int width = (int) Math.ceil((widthMm + 4) * PIXELS_PER_MM);
        int height = (int) Math.ceil((heightMm + 4) * PIXELS_PER_MM);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(inverted ? Color.BLACK : Color.WHITE);
        graphics.fillRect(0, 0, width, height);
        graphics.setColor(inverted ? Color.WHITE : Color.BLACK);
        Affine toPixels = new Affine(PIXELS_PER_MM, 0, 0, -PIXELS_PER_MM, width / 2.0, height / 2.0);
        graphics.fill(code.area().outline().transform(toPixels).toShape(FillRule.NON_ZERO));
        graphics.dispose();
        return image;
    }

    /** The modules of the code, as dark or light as the picture is at their centres. */
    static BitMatrix modules(BufferedImage image, MadeCode code) {
        BitMatrix modules = new BitMatrix(code.columns(), code.rows());
        double pixels = code.moduleMm() * PIXELS_PER_MM;
        for (int row = 0; row < code.rows(); row++) {
            for (int column = 0; column < code.columns(); column++) {
                double x = image.getWidth() / 2.0 + (column + 0.5 - code.columns() / 2.0) * pixels;
                double y = image.getHeight() / 2.0 + (row + 0.5 - code.rows() / 2.0) * pixels;
                if ((image.getRGB((int) x, (int) y) & 0xFF) < 0x80) {
                    modules.set(column, row);
                }
            }
        }
        return modules;
    }

    /** What a program reads from the picture, without the last line end; skipped, saying so, where it is not installed. */
    static String read(BufferedImage image, Path folder, String... command) {
        Assumptions.assumeTrue(
                Stream.of(System.getenv("PATH").split(java.io.File.pathSeparator))
                        .anyMatch(path -> Files.isExecutable(Path.of(path, command[0]))),
                command[0] + " is not installed");
        try {
            Path file = folder.resolve("code.png");
            ImageIO.write(image, "png", file.toFile());
            List<String> line = new ArrayList<>(List.of(command));
            line.add(file.toString());
            Process process = new ProcessBuilder(line)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            return text.replaceAll("\n$", "");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
