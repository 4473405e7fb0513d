package dev.quoin.job;

import dev.quoin.store.Run;
import dev.quoin.store.RunFolder;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Keeps the inputs of a run as they were. */
record InputsWriter(LoadedJob job, RunFolder folder) {
    static final String FOLDER = "inputs/";

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
    static String fontFolder(int index) {
        return index == 0 ? "fonts" : "fonts-" + (index + 1);
    }

    private static String fontFolders(JobSettings settings) {
        return IntStream.range(0, settings.paths(JobKey.FONTS).size())
                .mapToObj(InputsWriter::fontFolder)
                .collect(Collectors.joining(","));
    }

    private Optional<String> value(JobKey key) {
        JobSettings settings = job.settings();
        return switch (key) {
            case OUT, REPLACE -> Optional.empty();
            case SHOP -> settings.text(key).map(folderName -> "shop");
            case FONTS -> settings.text(key).map(given -> fontFolders(settings));
            case TEMPLATE, JIG -> settings.path(key).map(job.files()::nameOf);
            default -> settings.text(key);
        };
    }
}
