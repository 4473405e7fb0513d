package dev.quoin.shop;

import java.util.List;
import java.util.Map;

/** {@code lenses.csv}. */
final class LensTable {
    static final List<String> REQUIRED =
            List.of("lens", "field_mm", "focal_length_mm", "focus_distance_mm", "margin_mm");
    static final List<String> OPTIONAL = List.of("note");

    private LensTable() {}

    static Map<String, Lens> read(ShopTable table) {
        table.mustHaveRows("lens");
        return table.named("lens", LensTable::lens);
    }

    private static Lens lens(ShopRow row) {
        Lens lens = new Lens(
                row.text("lens"),
                row.number("field_mm", Range.POSITIVE),
                row.number("focal_length_mm", Range.POSITIVE),
                row.number("focus_distance_mm", Range.POSITIVE),
                row.number("margin_mm", Range.NOT_NEGATIVE, 0),
                row.text("note"));
        if (2 * lens.margin() >= lens.field()) {
            row.error("margin_mm", "on both sides it leaves nothing of the field", "write less than half of field_mm");
        }
        return lens;
    }
}
