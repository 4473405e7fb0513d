package dev.quoin.job;

import dev.quoin.drawing.ArtFile;
import dev.quoin.drawing.ArtFolder;
import dev.quoin.drawing.FoundArt;
import dev.quoin.drawing.RefusedArt;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The drawings that a template shows: taken from its own folder, or else from the job's, and from nowhere else. Names
 * may come from strangers, so a name that leads out of both folders, by {@code ..} or by a link, is refused.
 */
final class JobArt implements ArtFolder {
    private static final Pattern ADDRESS = Pattern.compile("[A-Za-z][A-Za-z0-9+.-]*:.*|[/\\\\].*", Pattern.DOTALL);
    private static final long MOST_BYTES = 20_000_000;

    private final InputFiles files;
    private final List<Path> folders;

    /**
     * Takes the folders.
     *
     * @param template the template's
     * @param job the job's
     */
    JobArt(InputFiles files, Path template, Path job) {
        this.files = files;
        this.folders = List.of(
                template.toAbsolutePath().normalize(), job.toAbsolutePath().normalize());
    }

    @Override
    public ArtFile find(String reference) {
        if (ADDRESS.matcher(reference).matches()) {
            return outside(reference);
        }
        try {
            boolean isInside = false;
            for (Path folder : folders) {
                Optional<Path> file = OwnFolder.file(folder, reference);
                if (file.isPresent() && Files.isRegularFile(file.get())) {
                    return take(file.get(), folder, reference);
                }
                isInside |= file.isPresent();
            }
            return isInside ? missing(reference) : outside(reference);
        } catch (IOException e) {
            return new RefusedArt("shows \"" + reference + "\", which cannot be read", "check the file");
        }
    }

    private ArtFile take(Path file, Path folder, String reference) throws IOException {
        if (Files.size(file) > MOST_BYTES) {
            return new RefusedArt(
                    "shows \"" + reference + "\", which has more than " + MOST_BYTES / 1_000_000 + " MB",
                    "simplify that drawing");
        }
        // Kept under its own path, so that the kept template finds it again.
        return new FoundArt(reference, files.readItself(file, "drawing", folder.relativize(file)));
    }

    private static RefusedArt outside(String reference) {
        return new RefusedArt(
                "shows \"" + reference + "\", which is outside the folders of the job and the template",
                "copy it into one of them, and name it from there");
    }

    private static RefusedArt missing(String reference) {
        return new RefusedArt(
                "shows \"" + reference + "\", which is neither in the template's folder nor in the job's",
                "check its name, or add the file");
    }
}
