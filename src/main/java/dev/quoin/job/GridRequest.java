package dev.quoin.job;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A settings trial that is asked for.
 *
 * @param recipe whose step is tried
 * @param step its number
 * @param vary one or two, such as {@code speed=500:2000:8}: across, then down
 * @param jig whose slot holds the piece to try on
 * @param slot which; the first usable one if not given
 * @param lens the lens's name; the recipe's if not given
 * @param swatch the side of a swatch, mm
 * @param out the run folder to write
 * @param settings of the job besides, by key: blank, date and the like
 */
public record GridRequest(
        String recipe,
        int step,
        List<String> vary,
        Path jig,
        Optional<String> slot,
        Optional<String> lens,
        double swatch,
        Optional<Path> shop,
        Path out,
        Map<JobKey, String> settings) {
    public GridRequest {
        vary = List.copyOf(vary);
        settings = Map.copyOf(settings);
    }
}
