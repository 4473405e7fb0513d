package dev.quoin.job;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Given a folder of fonts, then the run keeps those that its template names, and can be prepared again from them. */
class KeptFontsTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void fonts() throws IOException {
        copy("/net/sf/jasperreports/fonts/dejavu/DejaVuSans.ttf", "plain.ttf");
        copy("/net/sf/jasperreports/fonts/dejavu/DejaVuSerif.ttf", "serif.ttf");
        copy("/net/sf/jasperreports/fonts/dejavu/DejaVuSansMono.ttf", "more/mono.ttf");
    }

    @Test
    void theRunKeepsTheFontsThatItsTemplateNames() throws IOException {
        SmallJob job = job("DejaVu Serif, DejaVu Sans Mono");
        assertTrue(job.prepare().isPresent(), job::problems);
        assertEquals(List.of("fonts/more/mono.ttf", "fonts/serif.ttf"), kept(job));
        assertArrayEquals(
                Files.readAllBytes(folder.resolve("fonts/serif.ttf")),
                Files.readAllBytes(job.run().resolve("inputs/fonts/serif.ttf")));
        assertTrue(Files.readString(job.run().resolve("manifest.csv")).contains("inputs/fonts/serif.ttf"));
    }

    @Test
    void whatIsKeptPreparesTheSamePlates() throws IOException {
        SmallJob job = job("DejaVu Sans Mono");
        assertTrue(job.prepare().isPresent(), job::problems);
        byte[] plate = Files.readAllBytes(job.run().resolve("plate-001.svg"));
        Path inputs = Files.move(job.run().resolve("inputs"), folder.resolve("again"));
        dev.quoin.problem.Problems problems = new dev.quoin.problem.Problems();
        JobSettings settings =
                new JobSettingsReader(folder).read(inputs.toString(), java.util.Map.of(JobKey.OUT, "second"), problems);
        assertTrue(new Prepare(settings, Progress.SILENT).run(problems).result().isPresent());
        assertArrayEquals(plate, Files.readAllBytes(folder.resolve("second/plate-001.svg")));
    }

    @Test
    void aRunThatNamesNoneKeepsNone() throws IOException {
        SmallJob job = job("Barlow");
        assertTrue(job.prepare().isPresent(), job::problems);
        assertEquals(List.of(), kept(job));
        assertFalse(Files.readString(job.run().resolve("inputs/job.properties")).contains("fonts="));
    }

    private SmallJob job(String families) throws IOException {
        return new SmallJob(folder, "Name\nZoë\n")
                .file("template.svg", """
                        <svg xmlns="http://www.w3.org/2000/svg" width="8mm" height="8mm" viewBox="0 0 8 8">
                          <text class="engrave" x="1" y="5" font-size="2" font-family="FAMILIES">${name}</text>
                        </svg>
                        """.replace("FAMILIES", families))
                .with(JobKey.FONTS, folder.resolve("fonts").toString());
    }

    private static List<String> kept(SmallJob job) throws IOException {
        Path inputs = job.run().resolve("inputs");
        try (Stream<Path> files = Files.walk(inputs)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> inputs.relativize(file).toString())
                    .filter(name -> name.startsWith("fonts"))
                    .sorted()
                    .toList();
        }
    }

    private void copy(String resource, String name) throws IOException {
        Path file = folder.resolve("fonts").resolve(name);
        Files.createDirectories(file.getParent());
        try (InputStream in = KeptFontsTest.class.getResourceAsStream(resource)) {
            Files.copy(in, file);
        }
    }
}
