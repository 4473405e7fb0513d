package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Given the same inputs, then the same bytes: again, elsewhere, in another language and another time zone. */
class SameBytesTest {
    @TempDir
    Path folder;

    private JobFolder job;

    @BeforeEach
    void aJobWhoseTextsDependOnCareWithLanguagesAndDates() {
        job = new JobFolder(folder)
                .order("Name,Number,Town", "i\u0131\u0130I,2,Izmir", "Ada,1234,", "title,3,Isparta")
                .set("group-by", "Town")
                .set("order-by", "Number")
                .set("date", "2026-03-05")
                .template(JobFolder.text("${name?upper_case} ${number?number * 1.5}")
                        + "<circle class='outline' cx='4' cy='4' r='1.5' fill='none' stroke='black'/>")
                .jig("A1,0,0,0,50,25,yes", "A2,60,0,30,60,35,yes", "B1,0,60,90,50,25,no");
    }

    @Test
    void twice() throws Exception {
        SortedMap<String, byte[]> first = prepared("a");
        SortedMap<String, byte[]> second = prepared("b");
        assertSame(first, second);
    }

    @Test
    void atAnotherPathFromAnotherFolder() throws Exception {
        SortedMap<String, byte[]> first = prepared("a");
        Path elsewhere = Files.createDirectories(folder.resolve("far/away \u00E9"));
        assertEquals(
                0,
                QuoinRun.of(elsewhere, "prepare", folder.resolve("job").toString(), "--out", "x/y")
                        .status());
        assertSame(first, JobFolder.contents(elsewhere.resolve("x/y")));
    }

    @Test
    void inTurkishOnTheOtherSideOfTheWorldInAnotherEncoding() throws Exception {
        SortedMap<String, byte[]> first = prepared("a");
        List<String> options = List.of(
                "-Duser.language=tr",
                "-Duser.country=TR",
                "-Duser.timezone=Pacific/Kiritimati",
                "-Dfile.encoding=ISO-8859-9",
                "-Dline.separator=\r\n");
        int status = JavaProcess.start(folder, options, "prepare", "job", "--out", "b")
                .waitFor();
        assertEquals(
                0, status, Files.readString(folder.resolve("said.txt"), java.nio.charset.StandardCharsets.ISO_8859_1));
        assertSame(first, JobFolder.contents(folder.resolve("b")));
    }

    private SortedMap<String, byte[]> prepared(String out) throws Exception {
        QuoinRun run = job.prepare("--out", out);
        assertEquals(0, run.status(), run.err().toString());
        return JobFolder.contents(folder.resolve(out));
    }

    private static void assertSame(SortedMap<String, byte[]> first, SortedMap<String, byte[]> second) {
        assertEquals(first.keySet(), second.keySet());
        first.forEach((name, bytes) -> assertArrayEquals(bytes, second.get(name), name));
    }
}
