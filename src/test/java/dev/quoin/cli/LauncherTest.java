package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The launcher finds its jar and a Java wherever it stands, and hands over what it is given as it is. The Java here is a
 * script that writes down how it was called.
 */
class LauncherTest {
    private static final Path SHELL = Path.of("/bin/sh");

    @TempDir
    Path folder;

    private Path bin;
    private Path lib;
    private Path java;
    private final Map<String, String> environment = new HashMap<>();

    @BeforeEach
    void given() throws IOException {
        Assumptions.assumeTrue(Files.isExecutable(SHELL), "skipped: no shell at " + SHELL);
        bin = Files.createDirectories(folder.resolve("at the; $bench/bin"));
        lib = Files.createDirectories(folder.resolve("at the; $bench/lib")).toRealPath();
        changed(Files.createFile(lib.resolve("quoin.jar")), Instant.now().minusSeconds(60));
        Files.copy(Path.of("src/dist/bin/quoin"), bin.resolve("quoin"));
        executable(bin.resolve("quoin"));
        java = java("a java", "17.0.1", "touch \"${1#*=}\"");
    }

    /** A Java of a version, which makes an archive by a command. */
    private Path java(String name, String version, String archive) throws IOException {
        Path home = folder.resolve(name);
        Files.createDirectories(home.resolve("bin"));
        executable(Files.writeString(
                home.resolve("bin/java"), """
                #!/bin/sh
                echo "$1" >>"%s"
                case $1 in
                    -version) echo 'openjdk version "%s" 2021-10-19' >&2 ;;
                    -XX:ArchiveClassesAtExit=*|-XX:AOTCacheOutput=*) %s ;;
                    *) printf '<%%s>\\n' "$@" ;;
                esac
                """.formatted(folder.resolve("calls.txt"), version, archive)));
        return home;
    }

    /** Shells may tell times no finer than a second. */
    private static Path changed(Path file, Instant time) throws IOException {
        return Files.setLastModifiedTime(file, FileTime.from(time));
    }

    private static void executable(Path file) throws IOException {
        assertTrue(file.toFile().setExecutable(true));
        changed(file, Instant.now().minusSeconds(60));
    }

    private record Ended(int status, List<String> said) {}

    private Ended start(Path from, String launcher, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(SHELL.toString(), launcher));
        command.addAll(List.of(arguments));
        Path said = folder.resolve("said.txt");
        ProcessBuilder process = new ProcessBuilder(command)
                .directory(from.toFile())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile());
        process.environment().remove("QUOIN_JAVA_OPTS");
        process.environment().put("JAVA_HOME", java.toString());
        process.environment().putAll(environment);
        int status = process.start().waitFor();
        return new Ended(status, Files.readAllLines(said));
    }

    private Ended start(String... arguments) throws IOException, InterruptedException {
        return start(folder, bin.resolve("quoin").toString(), arguments);
    }

    private void assertStarts(Ended ended) {
        assertEquals(0, ended.status(), ended.said().toString());
        assertTrue(
                ended.said().contains("<" + lib.resolve("quoin.jar") + ">"),
                ended.said().toString());
        assertTrue(
                ended.said().contains("<-XX:SharedArchiveFile=" + lib.resolve("classes.jsa") + ">"),
                ended.said().toString());
    }

    private long archivesMade() throws IOException {
        return Files.readAllLines(folder.resolve("calls.txt")).stream()
                .filter(call -> call.matches("-XX:(ArchiveClassesAtExit|AOTCacheOutput)=.*"))
                .count();
    }

    @Test
    void argumentsAreHandedOnAsTheyAre() throws Exception {
        environment.put("QUOIN_JAVA_OPTS", "-Xmx4g -Dx=y");
        Ended ended = start("prepare", "two words", "", "$x `*` \"", "\\n");
        assertStarts(ended);
        int jar = ended.said().indexOf("<-jar>");
        assertEquals(List.of("<-Xmx4g>", "<-Dx=y>"), ended.said().subList(jar - 2, jar));
        assertEquals(
                List.of("<prepare>", "<two words>", "<>", "<$x `*` \">", "<\\n>"),
                ended.said().subList(jar + 2, ended.said().size()));
    }

    @Test
    void itIsFoundThroughLinksAndFromAnyFolder() throws Exception {
        Path link = Files.createSymbolicLink(folder.resolve("a link"), bin.resolve("quoin"));
        Path second = Files.createSymbolicLink(folder.resolve("second"), Path.of("a link"));
        assertStarts(start(folder, link.toString()));
        assertStarts(start(bin, second.toString()));
        assertStarts(start(bin, "quoin"));
        assertStarts(start(folder, "second"));
    }

    @Test
    void aPathForCdLeadsNowhereElse() throws Exception {
        environment.put("CDPATH", folder + ":.");
        assertStarts(start(folder, folder.relativize(bin) + "/quoin"));
    }

    @Test
    void withoutJavaOrWithAnOldOneItSaysSo() throws Exception {
        java = folder.resolve("nowhere");
        assertEquals(
                new Ended(
                        3,
                        List.of("quoin: there is no Java here; install a Java runtime 17 or later, or set JAVA_HOME")),
                start());
        java = java("old", "1.8.0_392", "false");
        assertEquals(
                new Ended(
                        3,
                        List.of("quoin: " + java
                                + "/bin/java is older than Java 17; install a Java runtime 17 or later,"
                                + " or set JAVA_HOME to one")),
                start());
    }

    @Test
    void theJavaBesideItComesBeforeThatOfTheEnvironment() throws Exception {
        Path own = Files.createDirectories(lib.resolveSibling("runtime"));
        Files.move(java.resolve("bin"), own.resolve("bin"));
        assertStarts(start());
    }

    @Test
    void theArchiveIsMadeOnceAndAgainForAnotherJavaOrJar() throws Exception {
        start();
        start();
        assertEquals(1, archivesMade());
        java = java("another", "21", "touch \"${1#*=}\"");
        start();
        start();
        assertEquals(2, archivesMade());
        changed(lib.resolve("quoin.jar"), Instant.now().plusSeconds(60));
        start();
        assertEquals(3, archivesMade());
    }

    @Test
    void aJavaThatCanLinkAheadArchivesWhatItLinked() throws Exception {
        assertStarts(start());
        Path young = java("young", "25", "touch \"${1#*=}\"");
        Path old = java;
        java = young;
        assertEquals(
                "<-XX:AOTCache=" + lib.resolve("classes.aot") + ">",
                start().said().get(1));
        assertFalse(Files.exists(lib.resolve("classes.jsa")));
        java = old;
        assertStarts(start());
        assertFalse(Files.exists(lib.resolve("classes.aot")));
    }

    @Test
    void aJavaThatMakesNoArchiveIsNotAskedAtEachStart() throws Exception {
        java = java("plain", "17.0.1", "false");
        start();
        Ended ended = start();
        assertEquals(0, ended.status());
        assertFalse(
                ended.said().toString().contains("SharedArchiveFile"),
                ended.said().toString());
        assertEquals(1, archivesMade());
        try (var left = Files.list(lib)) {
            assertEquals(
                    List.of("classes.for", "quoin.jar"),
                    left.map(file -> file.getFileName().toString()).sorted().toList());
        }
    }
}
