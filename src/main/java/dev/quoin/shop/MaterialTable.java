package dev.quoin.shop;

import java.util.List;
import java.util.Map;

/** {@code materials.csv}. */
final class MaterialTable {
    static final List<String> REQUIRED = List.of("material", "may_release", "advice", "source");

    private MaterialTable() {}

    static Map<String, Material> read(ShopTable table) {
        return table.named(
                "material",
                row -> new Material(
                        row.text("material"), row.text("may_release"), row.text("advice"), row.text("source")));
    }
}
