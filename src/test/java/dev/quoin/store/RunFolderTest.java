package dev.quoin.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunFolderTest {
    @TempDir
    Path folder;

    @Test
    void of_two_programs_that_make_one_run_the_first_to_finish_keeps_it() throws IOException {
        Path out = folder.resolve("run");
        try (RunFolder slow = RunFolder.begin(out, false)) {
            write(slow, "slow");
            Files.createDirectory(out);
            Files.writeString(out.resolve("plate-001.svg"), "quick");

            assertThrows(FileAlreadyExistsException.class, slow::publish);
        }

        assertEquals("quick", Files.readString(out.resolve("plate-001.svg")));
        assertEquals(List.of("run"), names());
    }

    @Test
    void a_record_begun_meanwhile_is_not_replaced() throws IOException {
        Path out = folder.resolve("run");
        finish(out, false, "first");
        try (RunFolder second = RunFolder.begin(out, true)) {
            write(second, "second");
            Files.createDirectory(out.resolve("record"));
            Files.writeString(out.resolve("record/log.csv"), "something was done\n");

            Exception refused = assertThrows(FileAlreadyExistsException.class, second::publish);
            assertTrue(refused.getMessage().contains("it has a record of work done"), refused::getMessage);
        }

        assertEquals("first", Files.readString(out.resolve("plate-001.svg")));
        assertEquals(List.of("run"), names());
    }

    @Test
    void a_run_that_may_be_replaced_is() throws IOException {
        Path out = folder.resolve("run");
        finish(out, false, "first");
        finish(out, true, "second");

        assertEquals("second", Files.readString(out.resolve("plate-001.svg")));
        assertEquals(List.of("run"), names());
    }

    private static void finish(Path out, boolean replace, String content) throws IOException {
        try (RunFolder run = RunFolder.begin(out, replace)) {
            write(run, content);
            run.publish();
        }
    }

    private static void write(RunFolder run, String content) throws IOException {
        try (Writer plate = run.createText("plate-001.svg")) {
            plate.write(content);
        }
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).toList();
        }
    }
}
