package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.quoin.browser.Chromium;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Given 500 rows of three kinds of code, then each is read from the picture that a browser makes of its plate, in the pocket
 * that items.csv names, by decoders that never saw it made: dmtxread (libdmtx) and zbarimg (ZBar).
 */
@Tag("slow")
class CodesOnPlatesTest {
    private static final double FIELD = 200;
    private static final int PIXELS_A_MM = 20;
    private static final double POCKET = 36;
    private static final int ACROSS = 5;
    private static final List<String> KINDS = List.of("datamatrix", "qr", "code128");

    private final Random random = new Random(500);

    @TempDir
    private Path folder;

    @Test
    void everyCodeSaysItsRowInItsSlot() throws IOException, InterruptedException {
        PreparedJob job = job(500);
        assertEquals(
                0,
                job.prepare(
                        "--template-column",
                        "Kind",
                        "--jig",
                        "tray.csv",
                        "--recipe",
                        "steel-tag",
                        "--lens",
                        "long-200",
                        "--jig-centre",
                        "0,0"),
                job::said);
        Chromium browser = new Chromium(folder);
        Map<String, BufferedImage> plates = new TreeMap<>();
        Map<String, List<String>> expected = new TreeMap<>();
        Map<String, List<Path>> crops = new TreeMap<>();
        List<Map<String, String>> items = job.table("items.csv");
        assertEquals(500, items.size());
        for (Map<String, String> item : items) {
            String plate = item.get("plate");
            if (!plates.containsKey(plate)) {
                plates.clear();
                plates.put(
                        plate,
                        picture(browser, job.run().resolve("plate-%03d.svg".formatted(Integer.parseInt(plate)))));
            }
            String kind = item.get("Kind").replace(".svg", "");
            BufferedImage crop =
                    pocket(plates.get(plate), Integer.parseInt(item.get("slot").substring(1)));
            Path file = folder.resolve("code-" + item.get("item") + ".png");
            ImageIO.write(crop, "png", file.toFile());
            expected.computeIfAbsent(kind, made -> new ArrayList<>()).add(item.get("Code"));
            crops.computeIfAbsent(kind, made -> new ArrayList<>()).add(file);
        }
        assertEquals(expected.get("datamatrix"), read(crops.get("datamatrix"), "dmtxread", "-n", "-N1", "-m10000"));
        assertEquals(expected.get("qr"), read(crops.get("qr"), "zbarimg", "-q", "--raw"));
        assertEquals(expected.get("code128"), read(crops.get("code128"), "zbarimg", "-q", "--raw"));
    }

    private PreparedJob job(int rows) throws IOException {
        StringBuilder order = new StringBuilder("Code,Kind\n");
        for (int i = 0; i < rows; i++) {
            String kind = KINDS.get(i % KINDS.size());
            order.append(PreparedJob.quoted(content(kind, i)) + "," + kind + ".svg\n");
        }
        StringBuilder tray = new StringBuilder("slot,x_mm,y_mm,rotation_deg,width_mm,height_mm,usable\n");
        for (int i = 0; i < ACROSS * ACROSS; i++) {
            tray.append("P" + i + "," + x(i) + "," + y(i) + "," + i % 4 * 90 + "," + POCKET + "," + POCKET + ",true\n");
        }
        PreparedJob job =
                new PreparedJob(folder).file("order.csv", order.toString()).file("tray.csv", tray.toString());
        for (String kind : KINDS) {
            job.file(kind + ".svg", """
                    <svg xmlns="http://www.w3.org/2000/svg" width="36mm" height="36mm" viewBox="0 0 36 36">
                      <rect class="engrave" x="1" y="10" width="34" height="16" data-code="%s" data-content="${code}"/>
                    </svg>
                    """.formatted(kind));
        }
        return job;
    }

    private String content(String kind, int i) {
        return switch (kind) {
            case "datamatrix" ->
                "SN-" + Long.toString(random.nextLong() >>> 20, 36).toUpperCase(java.util.Locale.ROOT) + "/" + i;
            case "qr" ->
                "https://example.org/t?n=" + i + "&k=" + Integer.toHexString(random.nextInt())
                        + (i % 2 == 0 ? "" : "&name=Zoë");
            default -> "A" + i + "-" + random.nextInt(100_000);
        };
    }

    /** The pocket's centre in the field, by the jig's numbers alone, mm. */
    private static double x(int pocket) {
        return (pocket % ACROSS - ACROSS / 2) * POCKET;
    }

    private static double y(int pocket) {
        return (ACROSS / 2 - pocket / ACROSS) * POCKET;
    }

    private BufferedImage picture(Chromium browser, Path plate) throws IOException, InterruptedException {
        int side = (int) (FIELD * PIXELS_A_MM);
        Path page = folder.resolve("page.html");
        Files.writeString(
                page,
                "<body style='margin:0'><img src='" + plate.toUri() + "' style='display:block;width:" + side
                        + "px;height:" + side + "px'></body>");
        return browser.picture(page, side, side);
    }

    private static BufferedImage pocket(BufferedImage plate, int pocket) {
        int side = (int) (POCKET * PIXELS_A_MM);
        int left = (int) ((FIELD / 2 + x(pocket) - POCKET / 2) * PIXELS_A_MM);
        int top = (int) ((FIELD / 2 - y(pocket) - POCKET / 2) * PIXELS_A_MM);
        BufferedImage crop = new BufferedImage(side, side, BufferedImage.TYPE_BYTE_GRAY);
        crop.createGraphics().drawImage(plate.getSubimage(left, top, side, side), 0, 0, null);
        return crop;
    }

    /** What a program reads from the pictures, a line each in their order: one that it cannot read makes the lines too few. */
    private static List<String> read(List<Path> pictures, String... command) throws IOException {
        Assumptions.assumeTrue(
                Stream.of(System.getenv("PATH").split(File.pathSeparator))
                        .anyMatch(path -> Files.isExecutable(Path.of(path, command[0]))),
                command[0] + " is not installed");
        List<String> line = new ArrayList<>(List.of(command));
        pictures.forEach(picture -> line.add(picture.toString()));
        Process process = new ProcessBuilder(line)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
    }
}
