package dev.quoin.art;

import freemarker.template.SimpleScalar;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateModel;
import java.util.List;
import java.util.Map;

/**
 * A row as FreeMarker sees it: each column by its variable's name, and {@code row["Exact header"]}. Values are strings
 * without outer blanks; an empty one is missing.
 */
final class RowModel implements TemplateHashModel {
    private final Map<String, Integer> variables;
    private final Map<String, Integer> headers;
    private final List<String> cells;

    RowModel(Map<String, Integer> variables, Map<String, Integer> headers, List<String> cells) {
        this.variables = variables;
        this.headers = headers;
        this.cells = cells;
    }

    @Override
    public TemplateModel get(String name) {
        return name.equals("row") ? new ByHeader() : cell(variables.get(name));
    }

    @Override
    public boolean isEmpty() {
        return cells.isEmpty();
    }

    // FreeMarker's own sign for a missing value is null.
    private TemplateModel cell(Integer column) {
        if (column == null) {
            return null;
        }
        String value = cells.get(column).strip();
        return value.isEmpty() ? null : new SimpleScalar(value);
    }

    private final class ByHeader implements TemplateHashModel {
        @Override
        public TemplateModel get(String header) {
            return cell(headers.get(header));
        }

        @Override
        public boolean isEmpty() {
            return headers.isEmpty();
        }
    }
}
