package dev.quoin.job;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.problem.Suggestion;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Reads what is set for a job: the command line, and {@code job.properties} of a job folder. */
public final class JobSettingsReader {
    static final String PROPERTIES = "job.properties";
    static final String ORDER = "order.csv";

    private final Path workingFolder;

    public JobSettingsReader(Path workingFolder) {
        this.workingFolder = workingFolder;
    }

    /**
     * Reads the settings of a job.
     *
     * @param job a job folder, or an order CSV
     * @param commandLine values given there; they win
     * @throws IOException if the job is not there or cannot be read
     */
    public JobSettings read(String job, Map<JobKey, String> commandLine, Problems problems) throws IOException {
        Path path = workingFolder.resolve(job).toAbsolutePath().normalize();
        if (!Files.exists(path)) {
            throw new NoSuchFileException(job, null, "there is no such job; give a job folder or an order CSV");
        }
        Map<JobKey, Setting> given = new EnumMap<>(JobKey.class);
        boolean isFolder = Files.isDirectory(path);
        if (isFolder && Files.exists(path.resolve(PROPERTIES))) {
            readProperties(path, given, problems);
        }
        commandLine.forEach((key, value) ->
                given.put(key, new Setting(value, Place.of("--" + key.option()), workingFolder)));
        JobSettings settings = isFolder
                ? new JobSettings(path.getFileName().toString(), path.resolve(ORDER), path, workingFolder, given)
                : new JobSettings(withoutExtension(path), path, path.getParent(), workingFolder, given);
        settings.checkForms(problems);
        return settings;
    }

    /** Settings of no job, from the command line alone. */
    public JobSettings without(String name, Map<JobKey, String> commandLine) {
        Map<JobKey, Setting> given = new EnumMap<>(JobKey.class);
        commandLine.forEach((key, value) ->
                given.put(key, new Setting(value, Place.of("--" + key.option()), workingFolder)));
        return new JobSettings(name, workingFolder.resolve(ORDER), workingFolder, workingFolder, given);
    }

    private static void readProperties(Path folder, Map<JobKey, Setting> given, Problems problems) throws IOException {
        String text = text(folder.resolve(PROPERTIES));
        List<String> lines =
                (text.startsWith("\uFEFF") ? text.substring(1) : text).lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            if (!line.isEmpty() && !line.startsWith("#")) {
                readLine(line, Place.of(PROPERTIES, i + 1), folder, given, problems);
            }
        }
    }

    private static String text(Path file) throws IOException {
        if (Files.isDirectory(file)) {
            throw new FileSystemException(
                    file.toString(), null, "a folder stands where the settings are expected; check its name");
        }
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (CharacterCodingException e) {
            throw new FileSystemException(file.toString(), null, "not in UTF-8; save it as UTF-8");
        }
    }

    private static void readLine(String line, Place place, Path folder, Map<JobKey, Setting> given, Problems problems) {
        int equals = line.indexOf('=');
        if (equals < 0) {
            problems.error(place, "'" + line + "' is no setting", "write key=value");
            return;
        }
        String name = line.substring(0, equals).strip();
        Setting setting = new Setting(line.substring(equals + 1).strip(), place, folder);
        JobKey.named(name)
                .ifPresentOrElse(
                        key -> {
                            if (given.put(key, setting) != null) {
                                problems.error(place, name + " is set twice", "keep one of the two lines");
                            }
                        },
                        () -> problems.error(
                                place, "unknown key '" + name + "'", Suggestion.remedy(name, JobKey.options())));
    }

    private static String withoutExtension(Path path) {
        String name = path.getFileName().toString();
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }
}
