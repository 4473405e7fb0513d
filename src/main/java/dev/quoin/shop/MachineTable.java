package dev.quoin.shop;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.problem.Suggestion;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** {@code machine.csv}: a row for each setting. */
final class MachineTable {
    static final List<String> REQUIRED = List.of("setting", "value");
    static final List<String> OPTIONAL = List.of("unit", "note");

    /** IEC 60825-1:2014, 4.3 (from memory). */
    private static final Set<String> LASER_CLASSES = Set.of("1", "1C", "1M", "2", "2M", "3R", "3B", "4");

    private final Map<Setting, Double> numbers = new EnumMap<>(Setting.class);
    private String laserClass = "";
    private FieldMirror mirror = FieldMirror.NONE;

    private MachineTable() {}

    static Machine read(ShopTable table, String file, Problems problems) {
        MachineTable machine = new MachineTable();
        numberDefaults(machine.numbers);
        List<String> keys = Setting.keys();
        Set<String> given =
                table.named("setting", row -> machine.take(row, keys)).keySet();
        for (String key : keys) {
            if (!given.contains(key) && !Setting.OPTIONAL.contains(key)) {
                problems.error(Place.of(file), "no setting '" + key + "'", "add a row for it");
            }
        }
        machine.checkOrder(Setting.MIN_FREQUENCY_KHZ, Setting.MAX_FREQUENCY_KHZ, file, problems);
        machine.checkOrder(Setting.MIN_PULSE_NS, Setting.MAX_PULSE_NS, file, problems);
        return machine.build();
    }

    private static void numberDefaults(Map<Setting, Double> numbers) {
        for (Setting setting : Setting.values()) {
            numbers.put(setting, 0.0);
        }
    }

    private String take(ShopRow row, List<String> keys) {
        String key = row.text("setting");
        if (!keys.contains(key)) {
            if (!key.isEmpty()) {
                row.error("setting", "'" + key + "' is not known", Suggestion.remedy(key, keys));
            }
        } else if (key.equals(Setting.LASER_CLASS)) {
            takeLaserClass(row);
        } else if (key.equals(Setting.FIELD_MIRROR)) {
            checkUnit(row, key, "");
            mirror = row.choice("value", FieldMirror.NONE);
        } else {
            takeNumber(row, Setting.valueOf(key.toUpperCase(Locale.ROOT)));
        }
        return key;
    }

    private void takeNumber(ShopRow row, Setting setting) {
        checkUnit(row, setting.key(), setting.unit);
        boolean optional = Setting.OPTIONAL.contains(setting.key());
        double value = optional ? row.number("value", setting.range, 0) : row.number("value", setting.range);
        numbers.put(setting, setting.convert(value));
    }

    private void takeLaserClass(ShopRow row) {
        checkUnit(row, Setting.LASER_CLASS, "");
        laserClass = row.text("value").toUpperCase(Locale.ROOT);
        if (!LASER_CLASSES.contains(laserClass)) {
            row.error(
                    "value",
                    "'" + row.text("value") + "' is no laser class",
                    "write the one on the machine's label, such as 4");
        }
    }

    private static void checkUnit(ShopRow row, String key, String unit) {
        String given = row.text("unit").replace('\u00B5', 'u').replace('\u03BC', 'u');
        if (!given.isEmpty() && !given.equals(unit)) {
            row.error(
                    "unit",
                    "'" + row.text("unit") + "' where " + key + (unit.isEmpty() ? " has none" : " is in " + unit),
                    unit.isEmpty() ? "leave it empty" : "convert the value to " + unit);
        }
    }

    private void checkOrder(Setting least, Setting most, String file, Problems problems) {
        if (numbers.get(least) > numbers.get(most) && numbers.get(most) > 0) {
            problems.error(Place.of(file), least.key() + " is more than " + most.key(), "correct one of them");
        }
    }

    private double at(Setting setting) {
        return numbers.get(setting);
    }

    private Machine build() {
        return new Machine(
                at(Setting.POWER_W),
                at(Setting.WAVELENGTH_NM),
                at(Setting.BEAM_DIAMETER_MM),
                at(Setting.M2),
                laserClass,
                at(Setting.MAX_SPEED_MM_S),
                at(Setting.MIN_FREQUENCY_KHZ),
                at(Setting.MAX_FREQUENCY_KHZ),
                at(Setting.MIN_PULSE_NS),
                at(Setting.MAX_PULSE_NS),
                at(Setting.JUMP_SPEED_MM_S),
                at(Setting.JUMP_SETTLE_US),
                at(Setting.LASER_ON_US),
                at(Setting.LASER_OFF_US),
                at(Setting.MARK_SETTLE_US),
                at(Setting.CORNER_US),
                at(Setting.LOAD_S),
                at(Setting.PLATE_S),
                at(Setting.SETUP_S),
                at(Setting.FIRST_PIECE_S),
                at(Setting.FIELD_TURN_DEG),
                mirror,
                at(Setting.SHIFT_S));
    }
}
