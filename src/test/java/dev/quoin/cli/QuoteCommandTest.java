package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Given a small job, quoin quote says what it comes to through each lens, and writes nothing. */
class QuoteCommandTest {
    @TempDir
    Path folder;

    private SmallJob job;

    @BeforeEach
    void job() throws IOException {
        job = SmallJob.in(folder);
    }

    private Program.Ended quote(String... options) {
        String[] command = new String[options.length + 2];
        command[0] = "quote";
        command[1] = job.folder().toString();
        System.arraycopy(options, 0, command, 2, options.length);
        return new Program(folder).run(command);
    }

    @Test
    void eachLensHasALineAndOneIsTaken() throws IOException {
        Program.Ended ended = quote();
        assertEquals(0, ended.status(), ended.err());
        assertTrue(ended.out().startsWith("tags: 8 items; 8 x steel-40x24\n"), ended.out());
        assertTrue(
                ended.out().lines().anyMatch(line -> line.startsWith("tray  short-100  100 mm  3 of 3")), ended.out());
        assertTrue(
                ended.out().lines().anyMatch(line -> line.startsWith("tray  long-200   200 mm  3 of 3")), ended.out());
        assertTrue(ended.out().contains("\ntake short-100 on tray: the smallest field"), ended.out());
        try (var files = Files.list(folder)) {
            assertEquals(1, files.count());
        }
    }

    @Test
    void aSlotThatNoJigHasIsAnErrorOfTheSettingsAndNotOfALens() {
        Program.Ended ended = quote("--skip-slots", "Z9");
        assertEquals(1, ended.status());
        assertTrue(ended.err().contains("--skip-slots: the jig tray has no slot 'Z9'"), ended.err());
        assertFalse(ended.out().contains("not short-100"), ended.out());
        Program.Ended first = quote("--first-slot", "Z9");
        assertEquals(1, first.status());
        assertTrue(first.err().contains("--first-slot: the jig tray has no slot 'Z9'"), first.err());
    }

    @Test
    void anotherJigIsCompared() throws IOException {
        Files.writeString(
                job.folder().resolve("pair.csv"),
                "slot,x_mm,y_mm,rotation_deg,width_mm,height_mm,usable\nA,0,0,0,24,14,yes\nB,30,0,0,24,14,yes\n");
        Program.Ended ended =
                quote("--other-jig", job.folder().resolve("pair.csv").toString());
        assertEquals(0, ended.status(), ended.err());
        assertTrue(
                ended.out().lines().anyMatch(line -> line.startsWith("pair  short-100  100 mm  2 of 2")), ended.out());
    }
}
