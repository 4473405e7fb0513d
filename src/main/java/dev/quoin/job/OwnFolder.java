package dev.quoin.job;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/** Files that a name from a stranger may mean: those inside a folder, wherever links in it lead. */
final class OwnFolder {
    private OwnFolder() {}

    /**
     * The file of this name in a folder, whether it exists or not; nothing if the name leads out of the folder.
     *
     * @throws IOException if a link cannot be followed
     */
    static Optional<Path> file(Path folder, String name) throws IOException {
        Path base = folder.toAbsolutePath().normalize();
        Path file;
        try {
            file = base.resolve(name).normalize();
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
        boolean isInside = file.startsWith(base)
                && (!Files.exists(file) || file.toRealPath().startsWith(base.toRealPath()));
        return isInside ? Optional.of(file) : Optional.empty();
    }
}
