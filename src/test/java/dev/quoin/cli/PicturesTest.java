package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Given a lens of 100 mm and a jig of two pockets of 40 x 20 mm, 60 mm apart, the field's centre between them, the right
 * one turned by 90 degrees and empty; and a tag on which one square is engraved, 4 mm wide, its centre 10 mm to the right
 * of the tag's centre and 5 mm above it.
 */
class PicturesTest {
    private static final int SIDE = 800;
    private static final double PIXELS_PER_MM = 8;
    private static final int DARK_BLUE = 0x2b4c7e;
    private static final int WHITE = 0xffffff;
    private static final int BLACK = 0x000000;

    @TempDir
    private Path folder;

    private JobFolder job;

    @BeforeEach
    void makeJob() {
        job = new JobFolder(folder)
                .set("lens", "short-100")
                .order("Name", "Ada")
                .jig("A1,0,0,0,40,20,yes", "A2,60,0,90,40,20,yes")
                .set("jig-centre", "30,0")
                .set("pictures", "true")
                .file("tag.svg", """
                        <svg xmlns="http://www.w3.org/2000/svg" width="40mm" height="20mm" viewBox="0 0 40 20">
                        <rect class="engrave" x="28" y="3" width="4" height="4"/>
                        </svg>
                        """);
    }

    @Test
    void theMarkLiesInItsPocketWhereTheJigsNumbersPutIt() throws IOException {
        BufferedImage picture = picture();
        assertEquals(SIDE, picture.getWidth(), "8 pixels a mm");
        assertEquals(SIDE, picture.getHeight());
        // In the field: the slot's centre at (-30, 0), the square's at (-20, 5).
        assertCentroid(picture, WHITE, -20, 5, 16);
    }

    @Test
    void inATurnedPocketTheMarkIsTurned() throws IOException {
        job.set("skip-slots", "A1");
        // (10, 5) turned anticlockwise by 90 degrees is (-5, 10).
        assertCentroid(picture(), WHITE, 30 - 5, 10, 16);
    }

    @Test
    void theFilledPocketAloneHasTheBlanksColour() throws IOException {
        BufferedImage picture = picture();
        assertEquals(DARK_BLUE, at(picture, -30, 0));
        assertEquals(WHITE, at(picture, 30, 0), "an empty pocket");
        int edge = at(picture, 20, 0) & 0xff;
        assertTrue(edge < 0xd0, "its outline is seen: " + edge);
    }

    @Test
    void marksAreBlackOnALightBlankAndOnOneOfNoKnownColour() throws IOException {
        job.set("blank", "steel-40x24").jig("A1,0,0,0,40,24,yes", "A2,60,0,90,40,24,yes");
        assertCentroid(picture(), BLACK, -20, 5, 16);
    }

    @Test
    void thePictureIsListedInTheManifestAndTheSameTwice() throws IOException {
        picture();
        byte[] first = Files.readAllBytes(job.run().resolve("plate-001.png"));
        assertTrue(Files.readString(job.run().resolve("manifest.csv")).contains("\nplate-001.png,"));
        assertEquals(0, job.quoin("verify", "runs/job").status());
        picture();
        assertArrayEquals(first, Files.readAllBytes(job.run().resolve("plate-001.png")));
    }

    @Test
    void withoutTheWishThereIsNoPicture() throws IOException {
        job.set("pictures", "false");
        job.prepare();
        assertTrue(Files.exists(job.run().resolve("plate-001.svg")));
        assertFalse(Files.exists(job.run().resolve("plate-001.png")));
    }

    @Test
    void filledAndHatchedRunsHaveTheSamePicture() throws IOException {
        picture();
        byte[] filled = Files.readAllBytes(job.run().resolve("plate-001.png"));
        job.set("hatched", "true");
        picture();
        assertArrayEquals(filled, Files.readAllBytes(job.run().resolve("plate-001.png")));
    }

    private BufferedImage picture() throws IOException {
        QuoinRun prepared = job.prepare("--replace");
        assertEquals(0, prepared.status(), String.join("\n", prepared.err()));
        return ImageIO.read(job.run().resolve("plate-001.png").toFile());
    }

    /** A point of the field, mm, y up. */
    private static int at(BufferedImage picture, double x, double y) {
        return picture.getRGB((int) (SIDE / 2 + x * PIXELS_PER_MM), (int) (SIDE / 2 - y * PIXELS_PER_MM)) & WHITE;
    }

    /** The marks: all that has their colour inside the two pockets, a pixel's breadth from their outlines. */
    private static void assertCentroid(BufferedImage picture, int ink, double x, double y, double area) {
        double count = 0;
        double sumX = 0;
        double sumY = 0;
        for (int py = 0; py < SIDE; py++) {
            for (int px = 0; px < SIDE; px++) {
                double mmX = (px + 0.5 - SIDE / 2.0) / PIXELS_PER_MM;
                double mmY = (SIDE / 2.0 - py - 0.5) / PIXELS_PER_MM;
                boolean left = Math.abs(mmX + 30) < 19.8 && Math.abs(mmY) < 9.8;
                boolean right = Math.abs(mmX - 30) < 9.8 && Math.abs(mmY) < 19.8;
                boolean filled = x < 0 ? left : right;
                if (filled && (picture.getRGB(px, py) & WHITE) == ink) {
                    count++;
                    sumX += mmX;
                    sumY += mmY;
                }
            }
        }
        assertEquals(x, sumX / count, 0.1, "x of the marks");
        assertEquals(y, sumY / count, 0.1, "y of the marks");
        assertEquals(area, count / PIXELS_PER_MM / PIXELS_PER_MM, 0.5, "their area, mm2");
    }
}
