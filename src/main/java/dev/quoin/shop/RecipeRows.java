package dev.quoin.shop;

import dev.quoin.geometry.Decimals;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** Recipes as rows of {@code recipes.csv}, cell by column: what {@link ShopReader} reads back. */
public final class RecipeRows {
    /** All columns, the optional ones too. */
    public static final List<String> COLUMNS = Stream.concat(
                    RecipeTable.REQUIRED.stream(), RecipeTable.OPTIONAL.stream())
            .toList();

    private RecipeRows() {}

    /** A row for each step. */
    public static List<Map<String, String>> of(Recipe recipe) {
        return recipe.steps().stream().map(step -> row(recipe, step)).toList();
    }

    private static Map<String, String> row(Recipe recipe, Step step) {
        Map<String, String> row = new LinkedHashMap<>();
        boolean fills = step.method() == Method.FILL;
        row.put("recipe", recipe.name());
        row.put("step", Integer.toString(step.number()));
        row.put("process", step.process());
        row.put("method", word(step.method()));
        row.put("power_percent", number(step.powerPercent()));
        row.put("speed_mm_s", number(step.speed()));
        row.put("frequency_khz", number(step.frequencyKhz()));
        row.put("pulse_ns", number(step.pulseNs()));
        row.put("spacing_mm", fills ? number(step.spacing()) : "");
        row.put("angle_deg", fills ? number(step.angle()) : "");
        row.put("turn_deg", fills ? number(step.turn()) : "");
        row.put("pattern", fills ? word(step.pattern()) : "");
        row.put("passes", Integer.toString(step.passes()));
        row.put("lens", recipe.lens());
        row.put("material", recipe.material());
        row.put("inset_mm", fills ? number(step.inset()) : "");
        row.put("edge", fills ? word(step.edge()) : "");
        row.put("note", step.note());
        return row;
    }

    /** Whether two recipes mark alike, whatever is noted of them. */
    public static boolean sameSettings(Recipe a, Recipe b) {
        return settings(a).equals(settings(b));
    }

    private static List<Map<String, String>> settings(Recipe recipe) {
        List<Map<String, String>> rows = of(recipe);
        rows.forEach(row -> row.keySet().removeAll(List.of("note", "material")));
        return rows;
    }

    private static String number(double value) {
        return Decimals.text(value, 6);
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
