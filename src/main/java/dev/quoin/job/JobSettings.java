package dev.quoin.job;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Everything that is chosen for a job, as the user wrote it.
 *
 * @param name the job's name: its folder's, or its order file's without the extension
 * @param order the order file
 * @param folder the job's folder
 * @param workingFolder where the program was started
 * @param given what was set; the command line before {@code job.properties}
 */
public record JobSettings(String name, Path order, Path folder, Path workingFolder, Map<JobKey, Setting> given) {
    public JobSettings {
        given = Map.copyOf(given);
    }

    public Optional<String> text(JobKey key) {
        return setting(key).map(Setting::value);
    }

    public Optional<Path> path(JobKey key) {
        return setting(key).map(setting -> setting.path(setting.value()));
    }

    /** A list with commas between. */
    public List<String> list(JobKey key) {
        return setting(key).map(setting -> split(setting.value())).orElse(List.of());
    }

    /** Paths with commas between. */
    public List<Path> paths(JobKey key) {
        return setting(key)
                .map(setting ->
                        split(setting.value()).stream().map(setting::path).toList())
                .orElse(List.of());
    }

    /** Whether a flag is set. */
    public boolean flag(JobKey key) {
        return text(key).map(value -> value.equals("true")).orElse(false);
    }

    /** Tells of each flag that is neither {@code true} nor {@code false}, and of dates that no calendar has. */
    void checkForms(Problems problems) {
        given.forEach((key, setting) -> {
            String told = key.option() + ": '" + setting.value() + "'";
            if (key.kind() == JobKey.Kind.FLAG && !setting.value().matches("true|false|")) {
                problems.error(setting.place(), told + " is neither true nor false", "write one of the two");
            }
            if (key.kind() == JobKey.Kind.DATE && !setting.value().isEmpty() && !isDate(setting.value())) {
                problems.error(
                        setting.place(), told + " is not a date", "write year, month and day, such as 2026-03-05");
            }
        });
    }

    private static boolean isDate(String text) {
        try {
            LocalDate.parse(text);
            return true;
        } catch (DateTimeParseException no) {
            return false;
        }
    }

    /** Where a key was set, or would be. */
    public Place place(JobKey key) {
        return setting(key).map(Setting::place).orElse(Place.of("--" + key.option()));
    }

    /** The run folder to write. */
    public Path out() {
        return path(JobKey.OUT).orElseGet(() -> workingFolder.resolve("runs").resolve(name));
    }

    /** The same, to replace a run that stands in the way. */
    public JobSettings replacing() {
        Map<JobKey, Setting> more = new HashMap<>(given);
        more.put(JobKey.REPLACE, new Setting("true", place(JobKey.REPLACE), workingFolder));
        return new JobSettings(name, order, folder, workingFolder, more);
    }

    /** The folders in which the files stand that it names. */
    public Set<Path> inputFolders() {
        Set<Path> folders = new HashSet<>(paths(JobKey.FONTS));
        folders.add(folder);
        folders.add(order.toAbsolutePath().getParent());
        path(JobKey.SHOP).ifPresent(folders::add);
        for (JobKey file : List.of(JobKey.TEMPLATE, JobKey.BACK_TEMPLATE, JobKey.JIG)) {
            path(file).map(path -> path.toAbsolutePath().getParent()).ifPresent(folders::add);
        }
        return folders;
    }

    private Optional<Setting> setting(JobKey key) {
        return Optional.ofNullable(given.get(key))
                .filter(setting -> !setting.value().isEmpty());
    }

    private static List<String> split(String value) {
        return Arrays.stream(value.split(","))
                .map(String::strip)
                .filter(text -> !text.isEmpty())
                .toList();
    }
}
