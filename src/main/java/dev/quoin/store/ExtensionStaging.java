package dev.quoin.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A hidden folder inside a run, in which an extension is written until it is whole. Its manifest is put there last, and is
 * the point of no return: before it a kill leaves nothing but the hidden folder, which the next extension sweeps away;
 * after it the files only have to be moved, the manifest last, and the next extension first ends what a kill cut short. Used
 * under the lock of {@link RunLog}.
 */
final class ExtensionStaging implements StagingArea {
    static final String NAME = ".extension";

    private final Path run;
    private final Path folder;
    private final String manifest;

    private ExtensionStaging(Path run, String manifest) {
        this.run = run;
        this.folder = run.resolve(NAME);
        this.manifest = manifest;
    }

    static ExtensionStaging in(Path run, String manifest) throws IOException {
        ExtensionStaging staging = new ExtensionStaging(run, manifest);
        Files.createDirectory(staging.folder);
        return staging;
    }

    /** Ends, or sweeps away, what a kill left of an extension. */
    static void recover(Path run) throws IOException {
        Path folder = run.resolve(NAME);
        if (!Files.isDirectory(folder)) {
            return;
        }
        try (Stream<Path> files = Files.list(folder)) {
            List<String> manifests = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.matches("manifest-\\d+\\.csv"))
                    .toList();
            if (manifests.size() == 1) {
                new ExtensionStaging(run, manifests.get(0)).publish();
            } else {
                Staging.removeTree(folder);
            }
        }
    }

    @Override
    public Path folder() {
        return folder;
    }

    @Override
    public void publish() throws IOException {
        try (Stream<Path> tree = Files.walk(folder)) {
            List<Path> files = tree.filter(Files::isRegularFile)
                    .filter(file -> !file.equals(folder.resolve(manifest)))
                    .sorted(Comparator.naturalOrder())
                    .toList();
            for (Path file : files) {
                move(file);
            }
        }
        move(folder.resolve(manifest));
        Staging.removeTree(folder);
    }

    private void move(Path file) throws IOException {
        Path target = run.resolve(folder.relativize(file).toString());
        Files.createDirectories(target.getParent());
        Files.move(file, target, StandardCopyOption.ATOMIC_MOVE);
    }

    @Override
    public void close() throws IOException {
        if (Files.isDirectory(folder) && !Files.exists(folder.resolve(manifest))) {
            Staging.removeTree(folder);
        }
    }
}
