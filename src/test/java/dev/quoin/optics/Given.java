package dev.quoin.optics;

import dev.quoin.problem.Place;
import dev.quoin.shop.EdgePass;
import dev.quoin.shop.FieldMirror;
import dev.quoin.shop.Lens;
import dev.quoin.shop.Machine;
import dev.quoin.shop.Method;
import dev.quoin.shop.Pattern;
import dev.quoin.shop.Recipe;
import dev.quoin.shop.Step;
import java.util.List;

/** Machines, lenses and recipes for tests; all figures invented. */
final class Given {
    private Given() {}

    /** At most 5000 mm/s, 20 to 100 kHz, 50 to 200 ns. */
    static Machine machine(double powerW, double wavelengthNm, double beamDiameterMm, double m2) {
        return new Machine(
                powerW,
                wavelengthNm,
                beamDiameterMm,
                m2,
                "4",
                5000,
                20,
                100,
                50,
                200,
                5000,
                0,
                0,
                0,
                0,
                0,
                0,
                0,
                0,
                0,
                0,
                FieldMirror.NONE,
                0);
    }

    static Lens lens(String name, double focalLength) {
        return new Lens(name, 0.7 * focalLength, focalLength, focalLength, 0, "");
    }

    static Step follow(double power, double speed, double frequency, double pulse) {
        return follow(1, "outline", power, speed, frequency, pulse);
    }

    static Step follow(int number, String process, double power, double speed, double frequency, double pulse) {
        return new Step(
                number,
                process,
                Method.FOLLOW,
                power,
                speed,
                frequency,
                pulse,
                0,
                0,
                0,
                Pattern.LINES,
                1,
                0,
                EdgePass.NONE,
                "");
    }

    static Step fill(double power, double speed, double frequency, double pulse, double spacing) {
        return new Step(
                1,
                "engrave",
                Method.FILL,
                power,
                speed,
                frequency,
                pulse,
                spacing,
                0,
                0,
                Pattern.LINES,
                1,
                0,
                EdgePass.NONE,
                "");
    }

    static Recipe recipe(String lens, Step... steps) {
        return new Recipe("tin", List.of(steps), lens, "", Place.of("recipes.csv", 4));
    }
}
