package dev.quoin.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Given a template that shows a drawing named by a column, then each row has its own, and none comes from elsewhere. */
class ArtPerRowTest {
    private static final String SVG = "<svg xmlns=\"http://www.w3.org/2000/svg\" ";

    @TempDir
    Path folder;

    private Path inside;

    @BeforeEach
    void given() throws IOException {
        inside = Files.createDirectories(folder.resolve("job").resolve("art")).getParent();
        Files.writeString(
                inside.resolve("art/moon.svg"),
                SVG + "viewBox=\"0 0 20 10\"><path class=\"engrave\" d=\"M0 0H20V10H0Z\"/></svg>");
        Files.writeString(
                inside.resolve("art/sun star.svg"), SVG + "width=\"4\" height=\"4\"><path d=\"M0 0H4V4H0Z\"/></svg>");
        Files.writeString(
                folder.resolve("secret.svg"), SVG + "viewBox=\"0 0 1 1\"><rect width=\"1\" height=\"1\"/></svg>");
    }

    private SmallJob job(String order) throws IOException {
        return new SmallJob(inside, order).file("template.svg", SVG + """
                        width="8mm" height="8mm" viewBox="0 0 8 8">
                        <image href="${motif}.svg" x="2" y="2" width="4" height="4"/>
                        </svg>
                        """);
    }

    @Test
    void itIsScaledIntoItsBoxAndKeptWithTheRun() throws IOException {
        SmallJob job = job("Motif\nart/moon\nart/sun star\n");
        assertTrue(job.prepare().isPresent(), job.problems());
        assertEquals("", job.problems());
        assertTrue(Files.exists(job.run().resolve("inputs/art/moon.svg")));
        assertTrue(Files.exists(job.run().resolve("inputs/art/sun star.svg")));
        String plate = Files.readString(job.run().resolve("plate-001.svg"));
        assertEquals(2, plate.split("<path", -1).length - 1, plate);
    }

    @Test
    void aMissingFileNamesItsRowAndHeader() throws IOException {
        SmallJob job = job("Motif\nart/moon\nart/wolf\n");
        assertTrue(job.prepare().isEmpty());
        assertEquals(
                "order.csv:3:1: Motif: <image> shows \"art/wolf.svg\", which is neither in the template's folder nor in"
                        + " the job's (template.svg:2:1); check its name, or add the file",
                job.problems());
    }

    @Test
    void nothingOutsideTheFoldersIsRead() throws IOException {
        Files.createSymbolicLink(inside.resolve("art/link.svg"), folder.resolve("secret.svg"));
        SmallJob job = job("Motif\n../secret\n" + folder.resolve("secret") + "\nfile:../secret\nhttp://localhost/a\n"
                + "art/../../secret\nart/link\n");
        assertTrue(job.prepare().isEmpty());
        assertEquals(6, job.problems().lines().count(), job.problems());
        assertTrue(
                job.problems().lines().allMatch(line -> line.contains("outside the folders of the job")),
                job.problems());
    }

    @Test
    void whatArtCannotHoldIsToldAtItsFileAndLineAndAtTheRow() throws IOException {
        Files.writeString(
                inside.resolve("art/bad.svg"),
                SVG
                        + "viewBox=\"0 0 9 9\">\n<text>Hi</text>\n<rect width=\"${w}\" height=\"1\"/>\n<image href=\"moon.svg\""
                        + " width=\"1\" height=\"1\"/>\n</svg>");
        SmallJob job = job("Motif\nart/bad\n");
        assertTrue(job.prepare().isEmpty());
        assertTrue(job.problems().contains("art/bad.svg:2:1: <text> is text, and art"), job.problems());
        assertTrue(job.problems().contains("art/bad.svg:3:1: <rect> has a placeholder"), job.problems());
        assertTrue(job.problems().contains("art/bad.svg:4:1: <image> shows another drawing"), job.problems());
        assertTrue(job.problems().contains("order.csv:2:1: Motif: <image> shows \"art/bad.svg\""), job.problems());
    }

    @Test
    void aRasterPictureIsAnError() throws IOException {
        SmallJob job = job("Motif\nart/moon\n");
        job.file("template.svg", SVG + """
                width="8mm" height="8mm" viewBox="0 0 8 8">
                <image href="art/${motif}.png" x="2" y="2" width="4" height="4"/>
                </svg>
                """);
        assertTrue(job.prepare().isEmpty());
        assertTrue(job.problems().contains("is a raster picture, which cannot be marked"), job.problems());
    }

    @Test
    void aColumnMayNameAPartOfTheTemplate() throws IOException {
        SmallJob job = job("Motif\nmoon\nstar\n");
        job.file("template.svg", SVG + """
                width="8mm" height="8mm" viewBox="0 0 8 8">
                <defs><rect id="moon" x="2" y="2" width="4" height="4"/></defs>
                <use href="#${motif}"/>
                </svg>
                """);
        assertTrue(job.prepare().isEmpty());
        assertTrue(
                job.problems()
                        .startsWith("order.csv:3:1: Motif: <use> refers to \"#star\", which is not in the drawing"),
                job.problems());
    }

    @Test
    void aValueOfAStyleIsAValueAndNothingMore() throws IOException {
        SmallJob job = job("Motif\nred\nred;display:none\n\"red}rect{fill:none\"\nurl(\n");
        job.file("template.svg", SVG + """
                width="8mm" height="8mm" viewBox="0 0 8 8">
                <rect x="2" y="2" width="4" height="4" style="fill:${motif};stroke:none"/>
                </svg>
                """);
        assertTrue(job.prepare().isEmpty());
        assertEquals(
                "order.csv:3:1: Motif: 'red;display:none' is not one value of a style; give a colour, a number or a word",
                job.problems().lines().findFirst().orElse(""));
        assertEquals(3, job.problems().lines().count(), job.problems());
    }
}
