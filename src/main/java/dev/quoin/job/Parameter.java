package dev.quoin.job;

import dev.quoin.shop.Step;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What may vary from swatch to swatch of a settings trial. */
enum Parameter {
    POWER("power_percent"),
    SPEED("speed_mm_s"),
    FREQUENCY("frequency_khz"),
    PULSE("pulse_ns"),
    SPACING("spacing_mm"),
    ANGLE("angle_deg"),
    PASSES("passes");

    private final String column;

    Parameter(String column) {
        this.column = column;
    }

    /** The word for it on the command line. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** How {@code recipes.csv} calls it. */
    String column() {
        return column;
    }

    boolean isWhole() {
        return this == PASSES;
    }

    static List<String> words() {
        return Arrays.stream(values()).map(Parameter::word).toList();
    }

    static Optional<Parameter> named(String word) {
        return Arrays.stream(values()).filter(one -> one.word().equals(word)).findFirst();
    }

    /** A step with another value of this. */
    Step set(Step s, double value) {
        return new Step(
                s.number(),
                s.process(),
                s.method(),
                this == POWER ? value : s.powerPercent(),
                this == SPEED ? value : s.speed(),
                this == FREQUENCY ? value : s.frequencyKhz(),
                this == PULSE ? value : s.pulseNs(),
                this == SPACING ? value : s.spacing(),
                this == ANGLE ? value : s.angle(),
                s.turn(),
                s.pattern(),
                this == PASSES ? (int) value : s.passes(),
                s.inset(),
                s.edge(),
                s.note());
    }
}
