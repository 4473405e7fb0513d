package dev.quoin.job;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.browser.Poppler;
import dev.quoin.problem.Problems;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Given an order of four pieces, then its proof shows them like this. */
class ProofTest {
    private static final String TAG = """
            <svg xmlns="http://www.w3.org/2000/svg" width="10mm" height="10mm" viewBox="0 0 10 10">
              <rect id="box" class="guide" x="1" y="2" width="8" height="6"/>
              <rect class="engrave" x="1" y="1" width="8" height="0.5"/>
              <text data-fit="box" data-min-height="1.2" data-max-height="1.2" data-lines="2" data-squeeze="0.5"
                    font-size="6">${name}%s</text>
            </svg>
            """;

    @TempDir
    private Path folder;

    private SmallJob job;

    @BeforeEach
    void given() throws IOException {
        job = new SmallJob(folder, "Name,Pieces,Note\n Bo & <Co> ,2,gift\nBartholomew Featherstone,1,\nTBC,1,late\n")
                .file("template.svg", TAG.formatted(""))
                .with(JobKey.QUANTITY_COLUMN, "Pieces")
                .with(JobKey.OUT, folder.resolve("proof.html").toString());
    }

    private Optional<ProofSummary> proof() throws IOException {
        Problems problems = new Problems();
        return new Proof(job.settings(problems), Progress.SILENT).run(problems).result();
    }

    private String page() throws IOException {
        assertEquals(4, proof().orElseThrow().pieces());
        return Files.readString(folder.resolve("proof.html"));
    }

    private static List<String> all(String page, String pattern) {
        return Pattern.compile(pattern)
                .matcher(page)
                .results()
                .map((MatchResult match) -> match.group(1))
                .toList();
    }

    @Test
    void everyPieceIsShownAndCopiesThatLookAlikeOnce() throws IOException {
        assertEquals(List.of("Pieces 1 to 2, 2 alike", "Piece 3", "Piece 4"), all(page(), "<h2>(Piece[^<]*)</h2>"));
    }

    @Test
    void copiesWithTheirOwnNumbersAreShownEach() throws IOException {
        job.file("template.svg", TAG.formatted(" ${serial}")).with(JobKey.SERIAL_START, "1");
        assertEquals(List.of("Piece 1", "Piece 2", "Piece 3", "Piece 4"), all(page(), "<h2>(Piece[^<]*)</h2>"));
    }

    @Test
    void whatWasTypedStandsBesideItCharacterByCharacter() throws IOException {
        String page = page();
        assertEquals(
                List.of(" Bo &amp; &lt;Co&gt; ", "Bartholomew Featherstone", "TBC"),
                all(page, "<dd dir=\"auto\">([^<]*)</dd>"));
        assertEquals(List.of("Name", "Name", "Name"), all(page, "<dt dir=\"auto\">([^<]*)</dt>"));
    }

    @Test
    void columnsToShowCanBeChosen() throws IOException {
        job.with(JobKey.SHOW, "Note, Name");
        String page = page();
        assertEquals(
                List.of("Note", "Name", "Note", "Name", "Note", "Name"), all(page, "<dt dir=\"auto\">([^<]*)</dt>"));
        assertTrue(page.contains("(empty)"));
        job.with(JobKey.SHOW, "Nam").with(JobKey.REPLACE, "true");
        assertTrue(proof().isEmpty());
    }

    @Test
    void brokenAndNarrowedTextsAndDoubtsAreSaidInWords() throws IOException {
        List<String> flags = all(page(), "<li dir=\"auto\">([^<]*)</li>");
        assertEquals("Broken into 2 lines: Bo &amp; / &lt;Co&gt;", flags.get(0));
        assertEquals("Broken into 2 lines: Bartholomew / Featherstone", flags.get(1));
        assertTrue(flags.get(2).matches("Letters narrowed to \\d\\d % of their width: Bartholomew / Featherstone"));
        assertEquals("Please check. Name: &#39;TBC&#39; would be marked as it stands", flags.get(3));
    }

    @Test
    void artworkThatAllPiecesShareIsWrittenOnce() throws IOException {
        String page = page();
        String bar = all(page, "<path id=\"(m1)\"").get(0);
        assertEquals(2, all(page, "(<use href=\"#" + bar + "\")").size());
    }

    @Test
    void thePageNeedsNothingBesideIt() throws IOException {
        String page = page();
        assertFalse(page.contains("http"), "refers to the network");
        assertFalse(page.contains("src="), "refers to a file");
        assertFalse(page.contains("<script"), "runs a script");
        assertTrue(page.contains("width=\"100.4mm\""), "the bar of 100 mm and its two ends");
    }

    @Test
    void theSameJobGivesTheSameBytes() throws IOException {
        String first = page();
        job.with(JobKey.REPLACE, "true");
        assertEquals(first, page());
    }

    @Test
    void aProofIsNotOverwrittenUnasked() throws IOException {
        page();
        assertThrows(FileAlreadyExistsException.class, this::proof);
    }

    @Test
    void errorsLeaveNothingBehind() throws IOException {
        job = new SmallJob(folder, "Name\nAnna\n\"\"\n")
                .file("template.svg", TAG.formatted("${nothing}"))
                .with(JobKey.OUT, folder.resolve("proof.html").toString());
        assertTrue(proof().isEmpty());
        try (Stream<Path> files = Files.list(folder)) {
            assertTrue(files.noneMatch(file -> file.getFileName().toString().contains("proof")));
        }
    }

    /** At 254 dots to the inch a millimetre is 10 pixels: the bar of 100 mm, its end strokes of 0.3 mm included, is 1003. */
    @Test
    void asPdfItIsTrueToScaleAndSaysTheSame() throws Exception {
        Path pdf = folder.resolve("proof.pdf");
        job.with(JobKey.OUT, pdf.toString());
        Problems problems = new Problems();
        new Proof(job.settings(problems), Progress.SILENT).run(problems);
        BufferedImage page = ImageIO.read(Poppler.picture(pdf, 1, 254).toFile());
        assertTrue(
                IntStream.range(0, page.getHeight()).anyMatch(y -> Math.abs(longestLine(page, y) - 1003) <= 3),
                "no line of 100 mm");
        String text = String.join("\n", Poppler.text(pdf));
        for (String word : List.of("Proof:", "Piece 3", "Name", "Approval", "Mark all pieces as they are drawn here")) {
            assertTrue(text.contains(word), word + " in " + text);
        }
        byte[] first = Files.readAllBytes(pdf);
        job.with(JobKey.REPLACE, "true");
        new Proof(job.settings(problems), Progress.SILENT).run(problems);
        assertArrayEquals(first, Files.readAllBytes(pdf));
    }

    /** The length of the longest dark line in a row of pixels. */
    private static int longestLine(BufferedImage page, int y) {
        int longest = 0;
        int length = 0;
        for (int x = 0; x < page.getWidth(); x++) {
            length = (page.getRGB(x, y) & 0xff) < 128 ? length + 1 : 0;
            longest = Math.max(longest, length);
        }
        return longest;
    }
}
