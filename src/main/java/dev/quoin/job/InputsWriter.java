package dev.quoin.job;

import dev.quoin.problem.Problems;
import dev.quoin.store.Run;
import dev.quoin.store.RunFolder;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Keeps the inputs of a run as they were. */
record InputsWriter(LoadedJob job, RunFolder folder) {
    static final String FOLDER = "inputs/";

    /**
     * Takes the fonts that the run's templates name among the files to keep, once all templates are known. Fonts of
     * several folders are kept in one folder for each, since the first wins.
     */
    void takeFonts(Problems problems) throws IOException {
        List<Path> folders = job.settings().paths(JobKey.FONTS);
        for (Path font : job.fonts().chosenFiles()) {
            int index = IntStream.range(0, folders.size())
                    .filter(i -> font.startsWith(folders.get(i)))
                    .findFirst()
                    .orElseThrow();
            String name = folders.get(index).relativize(font).toString().replace('\\', '/');
            job.files().keep(fontFolder(index) + "/" + name, Files.readAllBytes(font));
        }
        for (String family : job.fonts().usedSystemFamilies()) {
            problems.note(
                    job.settings().place(JobKey.SYSTEM_FONTS),
                    "the font '" + family + "' is this machine's own and is not kept with the run",
                    "put its file into a folder and name that with --fonts, to keep it");
        }
    }

    /** Writes the files, and the settings with their names, so that the folder can be read as a job again. */
    void write() throws IOException {
        String inputs = Run.numbered(FOLDER, job.section().number());
        try (Writer out = folder.createText(inputs + JobSettingsReader.PROPERTIES)) {
            for (JobKey key : JobKey.values()) {
                Optional<String> value = value(key);
                if (value.isPresent()) {
                    out.append(key.option()).append('=').append(value.get()).append('\n');
                }
            }
        }
        for (Map.Entry<String, byte[]> file : job.files().kept().entrySet()) {
            try (OutputStream out = folder.create(inputs + file.getKey())) {
                out.write(file.getValue());
            }
        }
    }

    /** The folder of inputs that keeps the fonts of one of the job's font folders, counted from 0. */
    private static String fontFolder(int index) {
        return index == 0 ? "fonts" : "fonts-" + (index + 1);
    }

    /** Those folders of fonts of which something is kept; empty if there is none. */
    private Optional<String> fontFolders() {
        String folders = IntStream.range(0, job.settings().paths(JobKey.FONTS).size())
                .mapToObj(InputsWriter::fontFolder)
                .filter(job.files()::keepsIn)
                .collect(Collectors.joining(","));
        return Optional.of(folders).filter(some -> !some.isEmpty());
    }

    private Optional<String> value(JobKey key) {
        JobSettings settings = job.settings();
        return switch (key) {
            case OUT, REPLACE, THREADS -> Optional.empty();
            case SHOP -> settings.text(key).map(folderName -> "shop");
            case FONTS -> fontFolders();
            case TEMPLATE, BACK_TEMPLATE, JIG -> settings.path(key).map(job.files()::nameOf);
            default -> settings.text(key);
        };
    }
}
