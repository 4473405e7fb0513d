package dev.quoin.job;

import dev.quoin.store.Run;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds the files that a run keeps by the paths under which a job names them: kept are their names only, not their folders.
 *
 * @param folders of the run's inputs; none if a job is prepared for the first time
 */
record KeptFiles(List<Path> folders) {
    static final KeptFiles NONE = new KeptFiles(List.of());

    static KeptFiles of(Run run) {
        List<Path> folders = new ArrayList<>();
        for (int section = 1; section <= run.sections(); section++) {
            folders.add(run.folder().resolve(Run.numbered(InputsWriter.FOLDER, section)));
        }
        return new KeptFiles(folders);
    }

    /** The kept file, or the path itself if none of its name is kept. */
    Path find(Path file) {
        String name = file.getFileName().toString();
        return folders.stream()
                .map(folder -> folder.resolve(name))
                .filter(Files::isRegularFile)
                .findFirst()
                .orElse(file);
    }

    /**
     * Makes sure that a name stands for one kept file.
     *
     * @throws FileSystemException if two of the name are kept, from two folders
     */
    void checkOne(Path file) throws IOException {
        String second = InputFiles.numbered(file.getFileName().toString(), 2);
        for (Path folder : folders) {
            if (Files.isRegularFile(folder.resolve(second))) {
                throw new FileSystemException(
                        file.toString(), null, "the run keeps two files of this name; prepare the added rows as a job");
            }
        }
    }
}
