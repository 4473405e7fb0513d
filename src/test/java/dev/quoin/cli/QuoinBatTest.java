package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The launcher for Windows does what the one for shells does ({@link LauncherTest}), as far as Wine's cmd shows it. The Java
 * here is a program that writes down how it was called. Where Wine or the compiler for that program is not installed (Debian:
 * wine, wine64, gcc-mingw-w64-x86-64), these tests are skipped.
 */
class QuoinBatTest {
    private static final Path WINE = Path.of("/usr/bin/wine");
    private static final Path COMPILER = Path.of("/usr/bin/x86_64-w64-mingw32-gcc");
    private static final boolean INSTALLED = Files.isExecutable(WINE) && Files.isExecutable(COMPILER);
    /** Wine's own files, which take seconds to make and are kept until the next clean build. */
    private static final Path DRIVES = Path.of("target/wine").toAbsolutePath();

    @TempDir
    static Path programs;

    @TempDir
    Path folder;

    private Path home;
    private final Map<String, String> environment = new HashMap<>();

    @BeforeAll
    static void given() throws Exception {
        if (!INSTALLED) {
            return;
        }
        assertEquals(
                0,
                new ProcessBuilder(
                                COMPILER.toString(),
                                "-municode",
                                "-o",
                                programs.resolve("java.exe").toString(),
                                "src/test/resources/dev/quoin/cli/stand-in-java.c")
                        .inheritIO()
                        .start()
                        .waitFor());
        Files.createDirectories(DRIVES);
        ProcessBuilder first = wine("cmd", "/c", "exit");
        assertEquals(
                0, first.redirectOutput(ProcessBuilder.Redirect.DISCARD).start().waitFor());
    }

    private static ProcessBuilder wine(String... arguments) {
        List<String> command = new ArrayList<>(List.of(WINE.toString()));
        command.addAll(List.of(arguments));
        ProcessBuilder process = new ProcessBuilder(command).redirectErrorStream(true);
        process.environment().put("WINEPREFIX", DRIVES.toString());
        process.environment().put("WINEDEBUG", "-all");
        return process;
    }

    @BeforeEach
    void givenADistribution() throws IOException {
        Assumptions.assumeTrue(INSTALLED, "skipped: no " + WINE + ", or no " + COMPILER);
        distribution("at the bench");
        environment.put("JAVA_HOME", windows(java("a java")));
        environment.put("STAND_IN_VERSION", "17.0.1");
        environment.put("STAND_IN_STATUS", "0");
        environment.put("STAND_IN_ARCHIVES", "yes");
    }

    private void distribution(String name) throws IOException {
        home = folder.resolve(name);
        Files.createDirectories(home.resolve("bin"));
        Files.createDirectories(home.resolve("lib"));
        Files.createFile(home.resolve("lib/quoin.jar"));
        Files.write(home.resolve("bin/quoin.bat"), batch().getBytes(StandardCharsets.US_ASCII));
    }

    /** With the ends of lines that the build gives it. */
    private static String batch() throws IOException {
        return Files.readString(Path.of("src/dist/bin/quoin.bat")).replace("\n", "\r\n");
    }

    private Path java(String name) throws IOException {
        return java(folder, name);
    }

    private static Path java(Path in, String name) throws IOException {
        Path java = in.resolve(name);
        Files.createDirectories(java.resolve("bin"));
        Files.copy(programs.resolve("java.exe"), java.resolve("bin/java.exe"));
        return java;
    }

    private static String windows(Path path) {
        return "Z:" + path.toString().replace('/', '\\');
    }

    private record Ended(int status, List<String> said, List<String> arguments) {
        void assertTold(String... some) {
            for (String one : some) {
                assertTrue(arguments.contains("<" + one + ">"), said + " " + arguments);
            }
        }
    }

    private Ended start(String... arguments) throws IOException, InterruptedException {
        List<String> command =
                new ArrayList<>(List.of(home.resolve("bin/quoin.bat").toString()));
        command.addAll(List.of(arguments));
        Path said = folder.resolve("said.txt");
        Path calls = folder.resolve("calls.txt");
        Files.deleteIfExists(calls);
        ProcessBuilder process =
                wine(command.toArray(String[]::new)).directory(folder.toFile()).redirectOutput(said.toFile());
        process.environment().remove("QUOIN_JAVA_OPTS");
        process.environment().remove("JAVA_HOME");
        process.environment().put("STAND_IN_CALLS", windows(calls));
        process.environment().putAll(environment);
        int status = process.start().waitFor();
        return new Ended(status, Files.readAllLines(said), Files.exists(calls) ? Files.readAllLines(calls) : List.of());
    }

    private void assertStarts(Ended ended, boolean first) {
        assertEquals(0, ended.status(), ended.said().toString());
        ended.assertTold(
                "-jar",
                windows(home.resolve("lib/quoin.jar")),
                "-XX:SharedArchiveFile=" + windows(home.resolve("lib/classes.jsa")));
        assertEquals(
                first,
                ended.arguments().contains("<dev.quoin.cli.FirstStart>"),
                ended.arguments().toString());
    }

    @Test
    void argumentsAreHandedOnAsTheyAre() throws Exception {
        environment.put("QUOIN_JAVA_OPTS", "-Xmx4g -Dx=y");
        Ended ended = start("prepare", "two words", "a & b (c)", "$x `*` !y!", "Name=x;y,z");
        List<String> told = ended.arguments();
        int jar = told.lastIndexOf("<-jar>");
        assertEquals(List.of("<-Xmx4g>", "<-Dx=y>"), told.subList(jar - 2, jar));
        assertEquals(
                List.of("<prepare>", "<two words>", "<a & b (c)>", "<$x `*` !y!>", "<Name=x;y,z>"),
                told.subList(jar + 2, told.size()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Program Files (x86)", "names & dates", "so!caret^semi;comma,equals=", "Łódź é"})
    void itStartsFromAnyFolder(String name) throws Exception {
        Assumptions.assumeTrue(
                name.chars().allMatch(letter -> letter < 128) || "UTF-8".equals(System.getProperty("sun.jnu.encoding")),
                "skipped: file names have no accents here");
        distribution(name);
        environment.put("JAVA_HOME", windows(java(home, "jdk")));
        assertStarts(start("--version"), true);
        assertStarts(start("--version"), false);
    }

    @Test
    void theJavaBesideItComesBeforeThatOfTheEnvironmentAndOfThePath() throws Exception {
        environment.put("JAVA_HOME", "\"" + windows(folder.resolve("a java")) + "\"");
        assertStarts(start(), true);
        environment.remove("JAVA_HOME");
        environment.put("WINEPATH", windows(folder.resolve("a java/bin")));
        assertStarts(start(), false);
        environment.put("JAVA_HOME", windows(folder.resolve("nowhere")));
        java(home, "runtime");
        assertStarts(start(), true);
    }

    @Test
    void withoutJavaOrWithAnOldOneItSaysSo() throws Exception {
        for (String old : List.of("1.8.0_392", "16.0.2")) {
            environment.put("STAND_IN_VERSION", old);
            assertEquals(
                    new Ended(
                            3,
                            List.of("quoin: \"" + windows(folder.resolve("a java/bin/java.exe"))
                                    + "\" is older than Java 17; install a Java runtime 17 or later,"
                                    + " or set JAVA_HOME to one"),
                            List.of("<-version>")),
                    start());
        }
        environment.remove("JAVA_HOME");
        assertEquals(
                new Ended(
                        3,
                        List.of("quoin: there is no Java here; install a Java runtime 17 or later, or set JAVA_HOME"),
                        List.of()),
                start());
    }

    @Test
    void theArchiveIsMadeAgainForAnotherJavaOrJar() throws Exception {
        assertStarts(start(), true);
        environment.put("JAVA_HOME", windows(java("another")));
        assertStarts(start(), true);
        Files.setLastModifiedTime(
                home.resolve("lib/quoin.jar"), FileTime.from(Instant.now().minusSeconds(600)));
        assertStarts(start(), true);
        assertStarts(start(), false);
    }

    @Test
    void aJavaThatCanLinkAheadArchivesWhatItLinked() throws Exception {
        assertStarts(start(), true);
        environment.put("STAND_IN_VERSION", "25");
        environment.put("JAVA_HOME", windows(java("young")));
        start().assertTold("-XX:AOTCache=" + windows(home.resolve("lib/classes.aot")));
        assertFalse(Files.exists(home.resolve("lib/classes.jsa")));
        environment.put("STAND_IN_VERSION", "17");
        environment.put("JAVA_HOME", windows(folder.resolve("a java")));
        assertStarts(start(), true);
        assertFalse(Files.exists(home.resolve("lib/classes.aot")));
    }

    @Test
    void aJavaThatMakesNoArchiveIsNotAskedAtEachStart() throws Exception {
        environment.remove("STAND_IN_ARCHIVES");
        start().assertTold("dev.quoin.cli.FirstStart", "-Xshare:auto");
        Ended second = start();
        assertFalse(second.arguments().contains("<dev.quoin.cli.FirstStart>"));
        second.assertTold("-Xshare:auto");
        try (var left = Files.list(home.resolve("lib"))) {
            assertEquals(
                    List.of("classes.for", "quoin.jar"),
                    left.map(file -> file.getFileName().toString()).sorted().toList());
        }
    }

    @Test
    void itEndsAsJavaDoes() throws Exception {
        for (int status : new int[] {0, 1, 2, 3}) {
            environment.put("STAND_IN_STATUS", Integer.toString(status));
            assertEquals(status, start("check").status());
        }
    }

    @Test
    void largeOrdersGetTheThoroughCompilerAndMoreRoom() throws Exception {
        Path job = Files.createDirectories(folder.resolve("a job & more"));
        Files.write(job.resolve("order.csv"), new byte[200 * 1024]);
        Path run = Files.createDirectories(folder.resolve("run (1)/inputs")).getParent();
        Files.write(run.resolve("inputs/order.csv"), new byte[200 * 1024 + 1]);
        String large = "-Xmn64m";
        String small = "-Xmn40m";
        start("prepare", windows(job)).assertTold(small, "-XX:TieredStopAtLevel=1");
        start("verify", windows(run)).assertTold(large, "-Xms200m", "-XX:Tier4InvocationThreshold=100000");
        start("prepare", "run (1)\\inputs\\order.csv").assertTold(large);
        start("status", windows(run)).assertTold(small);
        start("quote", windows(folder.resolve("nowhere"))).assertTold(small);
        start("check").assertTold(small);
    }
}
