package dev.quoin.cli;

import dev.quoin.geometry.Decimals;
import dev.quoin.job.Calibrate.Learnt;
import dev.quoin.toolpath.Calibrated;
import dev.quoin.toolpath.Delay;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a calibration found, in a few lines or as JSON. */
final class CalibrationText {
    private CalibrationText() {}

    static List<String> lines(Learnt learnt, String file) {
        Calibrated fit = learnt.calibrated();
        List<String> lines = new ArrayList<>();
        lines.add("plates timed   " + learnt.plates());
        lines.add("off before     " + error(fit.before()));
        lines.add("off after      " + error(fit.after()));
        lines.add("each foretold from the others: off " + error(fit.leaveOneOut()));
        for (Delay delay : Delay.values()) {
            String figure = fit.held().containsKey(delay)
                    ? figure(delay, delay.of(learnt.was())) + " kept: "
                            + fit.held().get(delay)
                    : figure(delay, delay.of(learnt.was())) + " -> "
                            + figure(delay, fit.delays().get(delay));
            lines.add(String.format(Locale.ROOT, "%-44s %s", delay.setting(), figure));
        }
        lines.add(
                "times show only the sum of laser_on_us, mark_settle_us and laser_off_us: they keep their proportion");
        lines.add("written        " + file);
        return lines;
    }

    static String json(Learnt learnt, String file) {
        Calibrated fit = learnt.calibrated();
        String delays = Stream.of(Delay.values())
                .map(delay -> "{\"setting\":\"" + delay.setting() + "\",\"was\":" + value(delay, delay.of(learnt.was()))
                        + ",\"is\":" + value(delay, fit.delays().get(delay)) + ",\"kept\":"
                        + fit.held().containsKey(delay) + "}")
                .collect(Collectors.joining(",", "[", "]"));
        return "{\"file\":" + SummaryText.quote(file) + ",\"plates\":" + learnt.plates() + ",\"before\":"
                + json(fit.before()) + ",\"after\":" + json(fit.after()) + ",\"leaveOneOut\":"
                + json(fit.leaveOneOut()) + ",\"delays\":" + delays + "}";
    }

    private static String json(Calibrated.Error error) {
        return "{\"typical\":" + Decimals.text(error.typical(), 5) + ",\"largest\":" + Decimals.text(error.largest(), 5)
                + "}";
    }

    private static String error(Calibrated.Error error) {
        return percent(error.typical()) + " %, at most " + percent(error.largest()) + " %";
    }

    private static String percent(double share) {
        return Decimals.text(100 * share, 1);
    }

    private static String figure(Delay delay, double seconds) {
        return value(delay, seconds)
                + switch (delay) {
                    case STROKE, JUMP, CORNER -> " us";
                    case JUMP_MM -> " mm/s";
                    case LOAD, PLATE, SHIFT -> " s";
                };
    }

    /** In the unit of its setting. */
    private static String value(Delay delay, double seconds) {
        return switch (delay) {
            case STROKE, JUMP, CORNER -> Decimals.text(seconds * 1e6, 1);
            case JUMP_MM -> Decimals.text(1 / seconds, 1);
            case LOAD, PLATE, SHIFT -> Decimals.text(seconds, 3);
        };
    }
}
