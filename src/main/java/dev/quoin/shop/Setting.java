package dev.quoin.shop;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The numbers of {@code machine.csv}, with their units and ranges. */
enum Setting {
    POWER_W("W", Range.POSITIVE),
    WAVELENGTH_NM("nm", Range.WAVELENGTH),
    BEAM_DIAMETER_MM("mm", Range.POSITIVE),
    M2("", Range.FROM_ONE),
    MAX_SPEED_MM_S("mm/s", Range.POSITIVE),
    MIN_FREQUENCY_KHZ("kHz", Range.POSITIVE),
    MAX_FREQUENCY_KHZ("kHz", Range.POSITIVE),
    MIN_PULSE_NS("ns", Range.POSITIVE),
    MAX_PULSE_NS("ns", Range.POSITIVE),
    JUMP_SPEED_MM_S("mm/s", Range.POSITIVE),
    JUMP_SETTLE_US("us", Range.NOT_NEGATIVE),
    LASER_ON_US("us", Range.NOT_NEGATIVE),
    LASER_OFF_US("us", Range.NOT_NEGATIVE),
    MARK_SETTLE_US("us", Range.NOT_NEGATIVE),
    CORNER_US("us", Range.NOT_NEGATIVE),
    LOAD_S("s", Range.NOT_NEGATIVE),
    PLATE_S("s", Range.NOT_NEGATIVE),
    SETUP_S("s", Range.NOT_NEGATIVE),
    FIRST_PIECE_S("s", Range.NOT_NEGATIVE),
    SHIFT_S("s", Range.NOT_NEGATIVE),
    FIELD_TURN_DEG("deg", Range.DEGREES);

    /** Settings that are no numbers. */
    static final String LASER_CLASS = "laser_class";

    static final String FIELD_MIRROR = "field_mirror";

    /** What may be left out. */
    static final List<String> OPTIONAL =
            List.of(FIRST_PIECE_S.key(), SHIFT_S.key(), FIELD_TURN_DEG.key(), FIELD_MIRROR);

    final String unit;
    final Range range;

    Setting(String unit, Range range) {
        this.unit = unit;
        this.range = range;
    }

    /** How the file calls it. */
    String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Its number in the program's own units: microseconds become seconds. */
    double convert(double value) {
        return unit.equals("us") ? value / 1e6 : value;
    }

    static List<String> keys() {
        List<String> keys =
                new ArrayList<>(Arrays.stream(values()).map(Setting::key).toList());
        keys.add(LASER_CLASS);
        keys.add(FIELD_MIRROR);
        return keys;
    }
}
