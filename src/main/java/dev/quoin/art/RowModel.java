package dev.quoin.art;

import dev.quoin.order.Item;
import freemarker.template.SimpleScalar;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateModel;
import java.time.LocalDate;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A row as FreeMarker sees it for one of its items: each column by its variable's name, and {@code row["Exact header"]}.
 * Values are strings without outer blanks, or dates; an empty one is missing. It remembers what it was asked for.
 */
final class RowModel implements TemplateHashModel {
    private final Columns columns;
    private final Item item;
    private final Map<Integer, LocalDate> dates;
    private final BitSet asked = new BitSet();
    private final BitSet joined = new BitSet();
    private boolean askedForItem;

    RowModel(Columns columns, Item item, Map<Integer, LocalDate> dates) {
        this.columns = columns;
        this.item = item;
        this.dates = dates;
    }

    Uses uses() {
        return new Uses(asked, joined, askedForItem);
    }

    /** Remembers which of these columns have line breaks, since they are set as spaces. */
    void joinLines(List<Integer> sources) {
        for (int column : sources) {
            String value = item.row().cells().get(column).strip();
            if (value.indexOf('\n') >= 0 || value.indexOf('\r') >= 0) {
                joined.set(column);
            }
        }
    }

    @Override
    public TemplateModel get(String name) {
        if (name.equals("row")) {
            return new ByHeader();
        }
        OptionalInt column = columns.ofVariable(name);
        return column.isPresent() ? cell(column.getAsInt()) : ofItem(name);
    }

    @Override
    public boolean isEmpty() {
        return item.row().cells().isEmpty();
    }

    // FreeMarker's own sign for a missing value is null.
    private TemplateModel cell(int column) {
        asked.set(column);
        String value = item.row().cells().get(column).strip();
        if (value.isEmpty()) {
            return null;
        }
        LocalDate date = dates.get(column);
        return date == null ? new SimpleScalar(value) : new TypedDate(date, value);
    }

    private TemplateModel ofItem(String name) {
        Optional<TemplateModel> value = ItemValues.named(name).flatMap(known -> known.of(item, columns));
        askedForItem |= value.isPresent();
        return value.orElse(null);
    }

    private final class ByHeader implements TemplateHashModel {
        @Override
        public TemplateModel get(String header) {
            OptionalInt column = columns.ofHeader(header);
            return column.isPresent() ? cell(column.getAsInt()) : null;
        }

        @Override
        public boolean isEmpty() {
            return item.row().cells().isEmpty();
        }
    }
}
