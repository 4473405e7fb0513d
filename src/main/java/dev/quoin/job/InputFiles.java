package dev.quoin.job;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads the files of a job, each once, and remembers them so that the run can keep them as they were. */
final class InputFiles {
    private final KeptFiles kept;
    private final Map<Path, byte[]> read = new LinkedHashMap<>();
    private final Map<String, byte[]> named = new LinkedHashMap<>();
    private final Map<Path, String> names = new LinkedHashMap<>();
    private final Set<String> jigs = new HashSet<>();

    InputFiles(KeptFiles kept) {
        this.kept = kept;
    }

    /**
     * The bytes of a file, which the run keeps.
     *
     * @param what it is, for the message if it is not there: "template"
     * @throws IOException if it cannot be read
     */
    byte[] read(Path file, String what) throws IOException {
        kept.checkOne(file);
        return readItself(kept.find(file), what);
    }

    /** The same, but never a file of its name that an earlier section of the run keeps. */
    byte[] readItself(Path file, String what) throws IOException {
        return readItself(file, what, file.getFileName());
    }

    /** The same, kept under a path of its own in the run's folder of inputs. */
    byte[] readItself(Path file, String what, Path keptAs) throws IOException {
        Path path = file.toAbsolutePath().normalize();
        byte[] known = read.get(path);
        if (known != null) {
            return known;
        }
        if (!Files.exists(path)) {
            throw new NoSuchFileException(file.toString(), null, "there is no such " + what + "; check its name");
        }
        if (Files.isDirectory(path)) {
            throw new NoSuchFileException(
                    file.toString(), null, "a folder stands where the " + what + " is expected; check its name");
        }
        byte[] bytes = Files.readAllBytes(path);
        read.put(path, bytes);
        String name = free(keptAs.toString().replace('\\', '/'), what);
        names.put(path, name);
        named.put(name, bytes);
        return bytes;
    }

    /**
     * The bytes of a file that a cell or the whole job names.
     *
     * @param namedAt the cell, where a missing file is a problem of the row; empty if the job names it
     * @throws IOException if it cannot be read, or the job names it and it is not there
     */
    Optional<byte[]> find(Path file, String what, Optional<Place> namedAt, Problems problems) throws IOException {
        if (namedAt.isPresent() && !Files.isRegularFile(kept.find(file))) {
            problems.error(namedAt.get(), "there is no " + what + " '" + file.getFileName() + "'", "check its name");
            return Optional.empty();
        }
        return Optional.of(read(file, what));
    }

    /** Keeps bytes that were read elsewhere. */
    void keep(String name, byte[] bytes) {
        named.put(name, bytes);
    }

    /** Whether something is kept in a folder of the inputs. */
    boolean keepsIn(String folder) {
        return named.keySet().stream().anyMatch(name -> name.startsWith(folder + "/"));
    }

    /** What is to be kept, by its name in the run's folder of inputs. */
    Map<String, byte[]> kept() {
        return named;
    }

    /** The folders of the files that were read. */
    Set<Path> folders() {
        return read.keySet().stream().map(Path::getParent).collect(Collectors.toUnmodifiableSet());
    }

    /** The name under which a file that was read is kept; its own if it was not read. */
    String nameOf(Path file) {
        Path path = kept.find(file).toAbsolutePath().normalize();
        return names.getOrDefault(path, path.getFileName().toString());
    }

    /** Two files of one name, from two folders, get a number; so do jigs that differ in their extension alone. */
    private String free(String name, String what) {
        String free = name;
        boolean isJig = what.equals("jig");
        for (int i = 2; named.containsKey(free) || isJig && jigs.contains(stem(free)); i++) {
            free = numbered(name, i);
        }
        if (isJig) {
            jigs.add(stem(free));
        }
        return free;
    }

    private static String stem(String name) {
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }

    /** {@code tag-2.svg}. */
    static String numbered(String name, int number) {
        String stem = stem(name);
        return stem + "-" + number + name.substring(stem.length());
    }
}
