package dev.quoin.toolpath;

import dev.quoin.shop.Machine;
import java.util.function.ToDoubleFunction;

/** A figure of the machine that can be learnt from the clock, as seconds for each time that it counts. */
public enum Delay {
    STROKE("laser_on_us + mark_settle_us + laser_off_us", 300e-6, MeasuredPlate::strokes) {
        @Override
        public double of(Machine machine) {
            return machine.laserOn() + machine.markSettle() + machine.laserOff();
        }
    },
    JUMP("jump_settle_us", 300e-6, MeasuredPlate::jumps) {
        @Override
        public double of(Machine machine) {
            return machine.jumpSettle();
        }
    },
    JUMP_MM("jump_speed_mm_s", 1 / 5000.0, MeasuredPlate::jumpMm) {
        @Override
        public double of(Machine machine) {
            return 1 / machine.jumpSpeed();
        }
    },
    CORNER("corner_us", 100e-6, MeasuredPlate::halfTurns) {
        @Override
        public double of(Machine machine) {
            return machine.corner();
        }
    },
    LOAD("load_s", 3, MeasuredPlate::items) {
        @Override
        public double of(Machine machine) {
            return machine.load();
        }
    },
    PLATE("plate_s", 15, MeasuredPlate::plates) {
        @Override
        public double of(Machine machine) {
            return machine.plate();
        }
    },
    SHIFT("shift_s", 5, MeasuredPlate::shifts) {
        @Override
        public double of(Machine machine) {
            return machine.shift();
        }
    };

    private final String setting;
    private final double usual;
    private final ToDoubleFunction<MeasuredPlate> count;

    Delay(String setting, double usual, ToDoubleFunction<MeasuredPlate> count) {
        this.setting = setting;
        this.usual = usual;
        this.count = count;
    }

    /** How {@code machine.csv} calls it. */
    public String setting() {
        return setting;
    }

    /** Its seconds on a machine. */
    public abstract double of(Machine machine);

    /** How often it counts on a plate. */
    double count(MeasuredPlate plate) {
        return count.applyAsDouble(plate);
    }

    /** The size to measure it by: the machine's own, or where that is nothing, a usual one; s. */
    double scale(Machine machine) {
        return of(machine) > 0 ? of(machine) : usual;
    }
}
