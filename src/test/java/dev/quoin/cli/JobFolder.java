package dev.quoin.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A small job in a folder called {@code job}: two rows with a name each, engraved on a tag of 50 x 25 mm, and a tray of
 * four pockets. A test changes what it is about.
 */
final class JobFolder {
    static final String TRAY = """
            slot,x_mm,y_mm,rotation_deg,width_mm,height_mm,usable
            A1,0,0,0,50,25,yes
            A2,60,0,180,50,25,yes
            B1,0,30,0,50,25,yes
            B2,100,30,90,50,25,yes
            """;

    private final Path workingFolder;
    private final Path folder;
    private final Map<String, String> settings = new LinkedHashMap<>();

    JobFolder(Path workingFolder) {
        this.workingFolder = workingFolder;
        this.folder = workingFolder.resolve("job");
        file("order.csv", "Name\nAda\nGrace\n");
        template(text("${name}"));
        file("tray.csv", TRAY);
        set("template", "tag.svg");
        set("jig", "tray.csv");
        set("recipe", "aluminium-tag");
        set("blank", "aluminium-50x25");
    }

    /** A text fitted to the middle of the tag, no lower than 2 mm. */
    static String text(String content) {
        return """
            <rect id="box" class="guide" x="5" y="8" width="40" height="8" fill="none" stroke="black"/>
            <text data-fit="box" data-min-height="2" font-family="DejaVu Sans" font-size="5">%s</text>
            """.formatted(content);
    }

    /** The template's page of 50 x 25 mm with this drawing on it. */
    JobFolder template(String drawing) {
        return file("tag.svg", """
                <svg xmlns="http://www.w3.org/2000/svg" width="50mm" height="25mm" viewBox="0 0 50 25">
                %s</svg>
                """.formatted(drawing));
    }

    JobFolder order(String... lines) {
        return file("order.csv", String.join("\n", lines) + "\n");
    }

    JobFolder jig(String... slots) {
        return file("tray.csv", TRAY.lines().findFirst().orElseThrow() + "\n" + String.join("\n", slots) + "\n");
    }

    /** Sets a key of {@code job.properties}. */
    JobFolder set(String key, String value) {
        settings.put(key, value);
        StringBuilder text = new StringBuilder();
        settings.forEach(
                (name, content) -> text.append(name).append('=').append(content).append('\n'));
        return file("job.properties", text.toString());
    }

    JobFolder file(String name, String content) {
        try {
            Path file = folder.resolve(name);
            Files.createDirectories(file.getParent());
            Files.writeString(file, content);
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Puts an empty folder where a file was. */
    JobFolder folderInPlaceOf(String name) {
        try {
            Files.delete(folder.resolve(name));
            Files.createDirectory(folder.resolve(name));
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Path run() {
        return workingFolder.resolve("runs/job");
    }

    QuoinRun prepare(String... options) {
        List<String> args = new ArrayList<>(List.of("prepare", "job"));
        args.addAll(List.of(options));
        return quoin(args.toArray(String[]::new));
    }

    QuoinRun quoin(String... args) {
        return QuoinRun.of(workingFolder, args);
    }

    /** All files and folders under a folder, by relative path; hidden ones too. */
    static SortedMap<String, byte[]> contents(Path root) throws IOException {
        SortedMap<String, byte[]> found = new TreeMap<>();
        try (Stream<Path> all = Files.walk(root)) {
            for (Path path : all.toList()) {
                String name = root.relativize(path).toString();
                found.put(name, Files.isDirectory(path) ? new byte[0] : Files.readAllBytes(path));
            }
        }
        return found;
    }

    static void delete(Path root) throws IOException {
        Files.walkFileTree(root, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Files.delete(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path folder, IOException e) throws IOException {
                Files.delete(folder);
                return FileVisitResult.CONTINUE;
            }
        });
    }
}
