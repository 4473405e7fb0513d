package dev.quoin.art;

import freemarker.template.SimpleScalar;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateModel;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.OptionalInt;
import java.util.Set;

/** A row that has a value for every name, and remembers which names it was asked for, with and without a column. */
final class TrialModel implements TemplateHashModel {
    private static final TypedDate SOME_DAY = new TypedDate(LocalDate.of(2001, 1, 1), "1");

    private final Columns columns;
    private final Set<String> known = new LinkedHashSet<>();
    private final Set<String> unknown = new LinkedHashSet<>();

    TrialModel(Columns columns) {
        this.columns = columns;
    }

    Set<String> known() {
        return known;
    }

    Set<String> unknown() {
        return unknown;
    }

    @Override
    public TemplateModel get(String name) {
        if (name.equals("row")) {
            return new ByHeader();
        }
        OptionalInt column = columns.ofVariable(name);
        if (column.isEmpty() && name.equals(Initials.NAME)) {
            // FreeMarker looks for a function where the row has nothing.
            return null;
        }
        boolean ofItem =
                ItemValues.named(name).filter(value -> value.exists(columns)).isPresent();
        return column.isEmpty() && ofItem ? new SimpleScalar("1") : value(name, column);
    }

    @Override
    public boolean isEmpty() {
        return false;
    }

    private TemplateModel value(String name, OptionalInt column) {
        (column.isPresent() ? known : unknown).add(name);
        boolean isDate = column.isPresent() && columns.dates().containsKey(column.getAsInt());
        return isDate ? SOME_DAY : new SimpleScalar("1");
    }

    private final class ByHeader implements TemplateHashModel {
        @Override
        public TemplateModel get(String header) {
            return value(header, columns.ofHeader(header));
        }

        @Override
        public boolean isEmpty() {
            return false;
        }
    }
}
