package dev.quoin.job;

import dev.quoin.shop.EdgePass;
import dev.quoin.shop.Method;
import dev.quoin.shop.Recipe;
import dev.quoin.shop.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The swatches of a trial in columns A, B, C and rows 1, 2, 3.
 *
 * @param tried the step whose values vary
 * @param across varies from column to column
 * @param down varies from row to row; none where there is one row
 */
record Swatches(Recipe recipe, Step tried, Variation across, Optional<Variation> down) {
    /** What the recipe of a trial is called. */
    static final String RECIPE = "settings-trial";

    static final String LABEL = "label";
    private static final String PROCESS = "swatch_";

    /** Labels are marked with at most so much power, %, and no faster than so many mm/s. */
    private static final double GENTLE_POWER = 20;

    private static final double GENTLE_SPEED = 600;

    /** A swatch: its column and row, from 0. */
    record Swatch(int column, int row) {
        /** {@code C4}. */
        String name() {
            return letter(column) + (row + 1);
        }
    }

    static String letter(int column) {
        return Character.toString((char) ('A' + column));
    }

    static String process(String swatch) {
        return PROCESS + swatch;
    }

    int columns() {
        return across.count();
    }

    int rows() {
        return down.map(Variation::count).orElse(1);
    }

    /** Row by row. */
    List<Swatch> all() {
        List<Swatch> all = new ArrayList<>();
        for (int row = 0; row < rows(); row++) {
            for (int column = 0; column < columns(); column++) {
                all.add(new Swatch(column, row));
            }
        }
        return all;
    }

    /** The step that a swatch is marked with. */
    Step step(Swatch swatch) {
        Step step = across.parameter().set(tried, across.value(swatch.column()));
        return down.map(vary -> vary.parameter().set(step, vary.value(swatch.row())))
                .orElse(step);
    }

    /** The trial as a recipe: the labels, then a step for each swatch. */
    Recipe trial(String lens) {
        List<Step> steps = new ArrayList<>();
        steps.add(labels());
        for (Swatch swatch : all()) {
            steps.add(named(step(swatch), steps.size() + 1, process(swatch.name()), ""));
        }
        return new Recipe(RECIPE, steps, lens, recipe.material(), recipe.place());
    }

    private Step labels() {
        return named(
                new Step(
                        1,
                        LABEL,
                        Method.FOLLOW,
                        Math.min(GENTLE_POWER, tried.powerPercent()),
                        Math.min(GENTLE_SPEED, tried.speed()),
                        tried.frequencyKhz(),
                        tried.pulseNs(),
                        0,
                        0,
                        0,
                        tried.pattern(),
                        1,
                        0,
                        EdgePass.NONE,
                        ""),
                1,
                LABEL,
                "gentle");
    }

    static Step named(Step s, int number, String process, String note) {
        return new Step(
                number,
                process,
                s.method(),
                s.powerPercent(),
                s.speed(),
                s.frequencyKhz(),
                s.pulseNs(),
                s.spacing(),
                s.angle(),
                s.turn(),
                s.pattern(),
                s.passes(),
                s.inset(),
                s.edge(),
                note);
    }
}
