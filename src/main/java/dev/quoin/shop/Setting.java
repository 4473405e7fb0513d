package dev.quoin.shop;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The numbers of {@code machine.csv}, with their units and ranges. */
enum Setting {
    POWER_W("W", Range.POSITIVE),
    WAVELENGTH_NM("nm", Range.from(100, 20_000)),
    BEAM_DIAMETER_MM("mm", Range.POSITIVE),
    M2("", Range.from(1, 1000)),
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
    FIELD_TURN_DEG("deg", Range.DEGREES);

    /** Settings that are no numbers. */
    static final String LASER_CLASS = "laser_class";

    static final String FIELD_MIRROR = "field_mirror";

    /** What may be left out. */
    static final List<String> OPTIONAL = List.of(FIRST_PIECE_S.key(), FIELD_TURN_DEG.key(), FIELD_MIRROR);

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

    /** What its number is multiplied by for the program's own units. */
    double factor() {
        return unit.equals("us") ? 1e-6 : 1;
    }

    static List<String> keys() {
        List<String> keys = new java.util.ArrayList<>(
                Arrays.stream(values()).map(Setting::key).toList());
        keys.add(LASER_CLASS);
        keys.add(FIELD_MIRROR);
        return keys;
    }
}
