package dev.quoin.shop;

import dev.quoin.problem.Problems;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** {@code recipes.csv}: a row for each step. */
final class RecipeTable {
    private static final Predicate<String> WORD =
            java.util.regex.Pattern.compile("[\\p{L}_][\\p{L}\\p{N}_-]*").asMatchPredicate();
    private static final Predicate<String> NUMBERED =
            java.util.regex.Pattern.compile(".*-[0-9]+").asMatchPredicate();

    static final List<String> REQUIRED = List.of(
            "recipe",
            "step",
            "process",
            "method",
            "power_percent",
            "speed_mm_s",
            "frequency_khz",
            "pulse_ns",
            "spacing_mm",
            "angle_deg",
            "turn_deg",
            "pattern",
            "passes",
            "lens");
    static final List<String> OPTIONAL = List.of("material", "inset_mm", "edge", "note");

    private static final int MOST_PASSES = 100_000;

    private final Optional<Set<String>> lenses;
    private final Optional<Set<String>> materials;
    private final Problems problems;

    RecipeTable(Optional<Set<String>> lenses, Optional<Set<String>> materials, Problems problems) {
        this.lenses = lenses;
        this.materials = materials;
        this.problems = problems;
    }

    /** The recipes, in the order of their first steps. */
    Map<String, Recipe> read(ShopTable table) {
        table.mustHaveRows("recipe");
        Map<String, List<ShopRow>> rows = new LinkedHashMap<>();
        for (ShopRow row : table.rows()) {
            rows.computeIfAbsent(row.name("recipe"), name -> new ArrayList<>()).add(row);
        }
        Map<String, Recipe> recipes = new LinkedHashMap<>();
        rows.forEach((name, steps) -> recipes.put(name, recipe(name, steps)));
        return Collections.unmodifiableMap(recipes);
    }

    private Recipe recipe(String name, List<ShopRow> rows) {
        List<Step> steps = new ArrayList<>();
        for (ShopRow row : rows) {
            steps.add(new StepRow(row, problems).read(steps.size() + 1));
        }
        return new Recipe(
                name,
                steps,
                oneFor(rows, "lens", lenses),
                oneFor(rows, "material", materials),
                rows.get(0).place());
    }

    /** What all rows of a recipe say alike; those that say nothing do not count. */
    private static String oneFor(List<ShopRow> rows, String column, Optional<Set<String>> known) {
        String one = "";
        for (ShopRow row : rows) {
            String named = row.reference(column, known);
            if (one.isEmpty()) {
                one = named;
            } else if (!named.isEmpty() && !named.equals(one)) {
                row.error(
                        column,
                        "'" + named + "' where an earlier step of '" + row.text("recipe") + "' has '" + one + "'",
                        "write one " + column + " for all its steps");
            }
        }
        return one;
    }

    /** A row as a step. */
    private record StepRow(ShopRow row, Problems problems) {
        /** Reads it; {@code number} is what its number should be. */
        Step read(int number) {
            checkNumber(number);
            Method method = row.choice("method", Method.class);
            return new Step(
                    number,
                    process(),
                    method,
                    row.number("power_percent", Range.PERCENT),
                    row.number("speed_mm_s", Range.POSITIVE),
                    row.number("frequency_khz", Range.POSITIVE),
                    row.number("pulse_ns", Range.POSITIVE),
                    spacing(method),
                    row.number("angle_deg", Range.DEGREES, 0),
                    row.number("turn_deg", Range.DEGREES, 0),
                    row.choice("pattern", Pattern.LINES),
                    row.whole("passes", 1, MOST_PASSES),
                    row.number("inset_mm", Range.NOT_NEGATIVE, 0),
                    row.choice("edge", EdgePass.NONE),
                    row.text("note"));
        }

        private void checkNumber(int expected) {
            String given = row.text("step");
            if (!given.equals(Integer.toString(expected))) {
                row.error(
                        "step",
                        (given.isEmpty() ? "empty" : "'" + given + "'") + " where step " + expected + " of '"
                                + row.text("recipe") + "' is due",
                        "number the steps 1, 2, 3 and so on in the order in which they run");
            }
        }

        /** A process is a word that can be a class in a drawing; "-2" after an id is left out there, so not here. */
        private String process() {
            String process = row.name("process");
            if (process.equals("guide")) {
                row.error("process", "'guide' is never marked", "choose another word");
            } else if (!process.isEmpty() && !WORD.test(process)) {
                row.error(
                        "process", "'" + process + "' is no word", "use letters, digits, '-' and '_', a letter first");
            } else if (NUMBERED.test(process)) {
                row.error("process", "'" + process + "' ends like a numbered id", "leave the number out");
            }
            return process;
        }

        private double spacing(Method method) {
            if (method == Method.FILL) {
                return row.number("spacing_mm", Range.POSITIVE);
            }
            if (row.number("spacing_mm", Range.NOT_NEGATIVE, 0) > 0) {
                row.warning("spacing_mm", "a follow step has none, so it is not used", "leave it empty");
            }
            return 0;
        }
    }
}
