package dev.quoin.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The reprints of a run: numbered files that come after what the run's manifest lists, each with a manifest of its own,
 * which is written last. Used under the lock of {@link RunLog}.
 */
public final class ReprintFolder {
    public static final String NAME = "reprints";
    private static final Pattern FILE = Pattern.compile("(?:reprint|manifest)-(\\d{1,9})[.-].*");

    private final Path run;

    public ReprintFolder(Path run) {
        this.run = run;
    }

    /** The number after the last, of whole ones and those that a kill cut short. */
    public int next() throws IOException {
        SortedSet<Integer> numbers = numbers(FILE);
        return numbers.isEmpty() ? 1 : numbers.last() + 1;
    }

    /** The numbers of the reprints that are whole: those with a manifest. */
    public SortedSet<Integer> whole() throws IOException {
        return numbers(Pattern.compile("manifest-(\\d{1,9})\\.csv"));
    }

    /** {@code reprints/reprint-001.svg}. */
    public static String name(int number, String extension) {
        return NAME + "/" + stem(number) + "." + extension;
    }

    /** {@code reprint-001}. */
    public static String stem(int number) {
        return String.format(Locale.ROOT, "reprint-%03d", number);
    }

    /** The plate file of a part: {@code reprints/reprint-001.svg} of the first, {@code reprints/reprint-001-part-2.svg}. */
    public static String plateFile(int number, int part, String extension) {
        return part == 1
                ? name(number, extension)
                : NAME + String.format(Locale.ROOT, "/reprint-%03d-part-%d.", number, part) + extension;
    }

    /** {@code reprints/manifest-001.csv}. */
    public static String manifest(int number) {
        return NAME + String.format(Locale.ROOT, "/manifest-%03d.csv", number);
    }

    /**
     * Writes a reprint; it counts once its manifest stands, last of all.
     *
     * @param contents by the files' names, from the run folder
     */
    public void write(int number, Map<String, byte[]> contents) throws IOException {
        Files.createDirectories(run.resolve(NAME));
        try {
            writeAll(number, contents);
        } catch (IOException e) {
            for (String name : contents.keySet()) {
                Files.deleteIfExists(run.resolve(name));
            }
            throw e;
        }
    }

    /** Takes back a reprint of which the record does not know yet. */
    public void withdraw(int number) throws IOException {
        Files.deleteIfExists(run.resolve(manifest(number)));
        try (Stream<Path> files = Files.list(run.resolve(NAME))) {
            for (Path file : files.filter(path -> isOf(number, path)).toList()) {
                Files.delete(file);
            }
        }
    }

    private static boolean isOf(int number, Path file) {
        Matcher name = FILE.matcher(file.getFileName().toString());
        return name.matches() && Integer.parseInt(name.group(1)) == number;
    }

    private void writeAll(int number, Map<String, byte[]> contents) throws IOException {
        SortedMap<String, String> hashes = new TreeMap<>();
        for (Map.Entry<String, byte[]> content : contents.entrySet()) {
            String name = content.getKey();
            write(name, content.getValue());
            hashes.put(name, HexFormat.of().formatHex(HashedFile.sha256().digest(content.getValue())));
        }
        write(manifest(number), Manifest.text(hashes).getBytes(StandardCharsets.UTF_8));
    }

    /** Writes a file whole or not at all. */
    private void write(String name, byte[] content) throws IOException {
        Path file = run.resolve(name);
        Path partial = file.resolveSibling("." + file.getFileName() + ".partial");
        try {
            Files.write(partial, content);
            Files.move(partial, file, StandardCopyOption.ATOMIC_MOVE);
        } catch (FileSystemException named) {
            throw named;
        } catch (IOException e) {
            // A full disk does not say which file it was.
            throw new FileSystemException(
                    file.toString(), null, "could not be written (" + e.getMessage() + "); make room and try again");
        } finally {
            Files.deleteIfExists(partial);
        }
    }

    private SortedSet<Integer> numbers(Pattern pattern) throws IOException {
        SortedSet<Integer> numbers = new TreeSet<>();
        if (Files.isDirectory(run.resolve(NAME))) {
            try (Stream<Path> files = Files.list(run.resolve(NAME))) {
                files.map(file -> pattern.matcher(file.getFileName().toString()))
                        .filter(Matcher::matches)
                        .forEach(name -> numbers.add(Integer.parseInt(name.group(1))));
            }
        }
        return numbers;
    }
}
