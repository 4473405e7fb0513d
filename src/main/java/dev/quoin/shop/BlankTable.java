package dev.quoin.shop;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** {@code blanks.csv}. */
final class BlankTable {
    static final List<String> REQUIRED = List.of("blank", "material");
    static final List<String> OPTIONAL = List.of("width_mm", "height_mm", "thickness_mm", "colour", "note");

    private BlankTable() {}

    static Map<String, Blank> read(ShopTable table, Optional<Set<String>> materials) {
        return table.named("blank", row -> blank(row, materials));
    }

    private static Blank blank(ShopRow row, Optional<Set<String>> materials) {
        String colour = row.text("colour");
        if (!colour.matches("|#[0-9a-fA-F]{3}|#[0-9a-fA-F]{6}|[a-zA-Z]{3,30}")) {
            row.error("colour", "'" + colour + "' is no colour", "write one like #c9cdd2, or a CSS colour name");
        }
        return new Blank(
                row.text("blank"),
                row.reference("material", materials),
                row.number("width_mm", Range.NOT_NEGATIVE, 0),
                row.number("height_mm", Range.NOT_NEGATIVE, 0),
                row.number("thickness_mm", Range.NOT_NEGATIVE, 0),
                colour,
                row.text("note"));
    }
}
