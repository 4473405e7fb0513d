package dev.quoin.verify;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.store.Manifest;
import dev.quoin.store.ReprintFolder;
import dev.quoin.store.Run;
import dev.quoin.store.RunFolder;
import dev.quoin.store.RunLog;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The files of a run against its manifests: each is there with the hash that its manifest gives, and none is there that no
 * manifest lists.
 */
public final class ListedFiles {
    static final String CHANGED = "changed since it was written";
    static final String RESTORE = "restore it from a copy, or prepare the run again";

    private final Path folder;
    private final Problems problems;
    private final SortedMap<String, String> hashes = new TreeMap<>();
    /** The manifest that lists each file. */
    private final Map<String, String> manifestOf = new HashMap<>();

    private final SortedSet<String> manifests = new TreeSet<>();

    /**
     * Takes the run's manifests, and those of its reprints that are whole.
     *
     * @throws IOException if a reprint's manifest cannot be read
     */
    public static ListedFiles of(Run run, Problems problems) throws IOException {
        ListedFiles files = new ListedFiles(run.folder(), problems);
        for (Manifest manifest : run.manifests()) {
            files.take(manifest);
        }
        for (int reprint : new ReprintFolder(run.folder()).whole()) {
            files.take(Manifest.read(run.folder(), ReprintFolder.manifest(reprint)));
        }
        return files;
    }

    private ListedFiles(Path folder, Problems problems) {
        this.folder = folder;
        this.problems = problems;
    }

    private void take(Manifest manifest) {
        manifests.add(manifest.file());
        hashes.putAll(manifest.hashes());
        manifest.hashes().keySet().forEach(file -> manifestOf.put(file, manifest.file()));
        if (!manifest.asWritten()) {
            problems.error(Place.of(manifest.file()), CHANGED, RESTORE);
        }
    }

    /** The files that are listed. */
    public Set<String> names() {
        return Collections.unmodifiableSet(hashes.keySet());
    }

    /** How many files are listed. */
    public int count() {
        return hashes.size();
    }

    /** What the manifest says that a file holds. */
    String hash(String file) {
        return hashes.getOrDefault(file, "");
    }

    /** Finds what is missing and what is there without being listed. */
    public void checkNames() throws IOException {
        try (Stream<Path> tree = Files.walk(folder)) {
            Set<String> found = tree.filter(path -> !Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS))
                    .map(this::name)
                    .collect(Collectors.toCollection(TreeSet::new));
            for (String file : found) {
                if (!hashes.containsKey(file) && !manifests.contains(file) && !file.equals(RunLog.FILE)) {
                    problems.error(Place.of(file), "no manifest lists it", remedyOfUnlisted(file));
                }
            }
            for (String file : hashes.keySet()) {
                if (!found.contains(file)) {
                    problems.error(Place.of(file), "missing", RESTORE);
                }
            }
        }
    }

    private String remedyOfUnlisted(String file) {
        if (RunFolder.isBeingExtended(folder)) {
            return "an extension was cut off: give the same quoin extend again";
        }
        return file.startsWith(ReprintFolder.NAME + "/")
                ? "a program was ended before the reprint was whole, so delete it and make it again"
                : "move it out of the run folder";
    }

    /** Proves all listed files unchanged but these, which are read later. */
    public void checkHashes(Set<String> except) throws IOException {
        for (Map.Entry<String, String> entry : hashes.entrySet()) {
            Path path = folder.resolve(entry.getKey());
            if (except.contains(entry.getKey()) || !Files.isRegularFile(path)) {
                continue;
            }
            try (InputStream in = Files.newInputStream(path)) {
                check(entry.getKey(), HashedInput.around(in).finish(), problems);
            }
        }
    }

    /** Whether a file held what its manifest says. */
    boolean check(String file, String sha256, Problems found) {
        boolean same = sha256.equals(hash(file));
        if (!same) {
            found.error(Place.of(file), "not what " + manifestOf.get(file) + " says it was", RESTORE);
        }
        return same;
    }

    private String name(Path path) {
        return folder.relativize(path).toString().replace('\\', '/');
    }
}
