package dev.quoin.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.browser.Chromium;
import dev.quoin.cli.Quoin;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Where a browser paints an item's ink, against where the jig's own numbers say it must be. The art is a quarter-full
 * L, which has no symmetry: a flipped y axis, a reversed rotation or a swapped axis moves its centroid by millimetres.
 */
@Tag("browser")
class PlacementInBrowserTest {
    private static final double FIELD = 100;
    private static final int PIXELS_A_MM = 30;
    private static final double TOLERANCE = 0.02;

    /** id, x, y, rotation; the jig's axes: x right, y up, anticlockwise. */
    private record Pocket(String id, double x, double y, double degrees) {}

    private static final List<Pocket> POCKETS = List.of(
            new Pocket("low", -30, -32.5, 0),
            new Pocket("high", 28, 31, 0),
            new Pocket("tilted", -27.25, 20.5, 30),
            new Pocket("upright", 5, 0, 90),
            new Pocket("over", 30, -25, 180),
            new Pocket("back", 0, -33, -45));

    @TempDir
    private Path folder;

    @Test
    void eachItemsInkLiesWhereTheJigSays() throws Exception {
        BufferedImage picture = picture(plate());
        for (Pocket pocket : POCKETS) {
            Ink ink = Ink.around(picture, centreX(pocket), centreY(pocket), 11 * PIXELS_A_MM);
            double[] expected = centroidInPicture(pocket);
            assertEquals(expected[0], ink.x() / PIXELS_A_MM, TOLERANCE, pocket.id() + ": x of the centroid, mm");
            assertEquals(expected[1], ink.y() / PIXELS_A_MM, TOLERANCE, pocket.id() + ": y of the centroid, mm");
            assertEquals(AREA, ink.pixels() / PIXELS_A_MM / PIXELS_A_MM, 0.05, pocket.id() + ": area, mm2");
        }
    }

    @Test
    void theCheckTellsAFlippedAndAReversedPocketApart() {
        Pocket tilted = POCKETS.get(2);
        double[] right = centroidInPicture(tilted);
        double[] reversed = centroidInPicture(new Pocket("", tilted.x(), tilted.y(), -tilted.degrees()));
        double[] flipped = centroidInPicture(new Pocket("", tilted.x(), -tilted.y(), tilted.degrees()));
        assertTrue(Math.hypot(right[0] - reversed[0], right[1] - reversed[1]) > 50 * TOLERANCE);
        assertTrue(Math.hypot(right[0] - flipped[0], right[1] - flipped[1]) > 50 * TOLERANCE);
    }

    // The L in a page of 16 x 12 mm, y down: a bar 10 x 2 at (2, 8) under a post 3 x 6 at (2, 2).
    private static final double AREA = 10 * 2 + 3 * 6;
    private static final double CENTROID_X = (20 * 7 + 18 * 3.5) / AREA - 8;
    private static final double CENTROID_Y_UP = 6 - (20 * 9 + 18 * 5) / AREA;

    private Path plate() throws IOException {
        Files.writeString(folder.resolve("order.csv"), "Name\n" + "x\n".repeat(POCKETS.size()));
        Files.writeString(folder.resolve("l.svg"), """
                <svg xmlns="http://www.w3.org/2000/svg" width="16mm" height="12mm" viewBox="0 0 16 12">
                  <path d="M2 2 H5 V8 H12 V10 H2 Z"/>
                </svg>""");
        StringBuilder jig = new StringBuilder("slot,x_mm,y_mm,rotation_deg,width_mm,height_mm,usable\n");
        for (Pocket pocket : POCKETS) {
            jig.append(pocket.id() + "," + pocket.x() + "," + pocket.y() + "," + pocket.degrees() + ",16,12,yes\n");
        }
        Files.writeString(folder.resolve("jig.csv"), jig);
        StringWriter said = new StringWriter();
        PrintWriter out = new PrintWriter(said, true);
        int status = new Quoin(out, out, folder, false)
                .run(
                        "prepare",
                        "order.csv",
                        "--template",
                        "l.svg",
                        "--jig",
                        "jig.csv",
                        "--recipe",
                        "slate",
                        "--lens",
                        "short-100",
                        "--jig-centre",
                        "0,0",
                        "--out",
                        "run");
        assertEquals(0, status, said.toString());
        return folder.resolve("run/plate-001.svg");
    }

    private BufferedImage picture(Path plate) throws IOException, InterruptedException {
        int side = (int) (FIELD * PIXELS_A_MM);
        Path page = folder.resolve("page.html");
        Files.writeString(
                page,
                "<body style='margin:0'><img src='" + plate.toUri() + "' style='display:block;width:" + side
                        + "px;height:" + side + "px'></body>");
        return new Chromium(folder).picture(page, side, side);
    }

    /** By the jig's numbers alone, mm from the picture's upper left corner, y down. */
    private static double[] centroidInPicture(Pocket pocket) {
        double[] centroid = {CENTROID_X, CENTROID_Y_UP};
        AffineTransform pose = AffineTransform.getTranslateInstance(pocket.x(), pocket.y());
        pose.rotate(Math.toRadians(pocket.degrees()));
        pose.transform(centroid, 0, centroid, 0, 1);
        return new double[] {FIELD / 2 + centroid[0], FIELD / 2 - centroid[1]};
    }

    private static double centreX(Pocket pocket) {
        return (FIELD / 2 + pocket.x()) * PIXELS_A_MM;
    }

    private static double centreY(Pocket pocket) {
        return (FIELD / 2 - pocket.y()) * PIXELS_A_MM;
    }

    /** Painted pixels near a point, weighed by how dark they are: their sum and centroid. */
    private record Ink(double pixels, double x, double y) {
        static Ink around(BufferedImage picture, double cx, double cy, double radius) {
            double sum = 0;
            double x = 0;
            double y = 0;
            for (int py = (int) Math.max(0, cy - radius); py < Math.min(picture.getHeight(), cy + radius); py++) {
                for (int px = (int) Math.max(0, cx - radius); px < Math.min(picture.getWidth(), cx + radius); px++) {
                    double dark = 1 - (picture.getRGB(px, py) & 0xff) / 255.0;
                    if (Math.hypot(px + 0.5 - cx, py + 0.5 - cy) < radius) {
                        sum += dark;
                        x += dark * (px + 0.5);
                        y += dark * (py + 0.5);
                    }
                }
            }
            return new Ink(sum, x / sum, y / sum);
        }
    }
}
