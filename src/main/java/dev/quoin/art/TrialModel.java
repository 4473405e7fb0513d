package dev.quoin.art;

import freemarker.template.SimpleScalar;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateModel;
import java.util.LinkedHashSet;
import java.util.Set;

/** A row that has a value for every name, and remembers which names it was asked for, with and without a column. */
final class TrialModel implements TemplateHashModel {
    private final Set<String> variables;
    private final Set<String> headers;
    private final Set<String> known = new LinkedHashSet<>();
    private final Set<String> unknown = new LinkedHashSet<>();

    TrialModel(Set<String> variables, Set<String> headers) {
        this.variables = variables;
        this.headers = headers;
    }

    Set<String> known() {
        return known;
    }

    Set<String> unknown() {
        return unknown;
    }

    @Override
    public TemplateModel get(String name) {
        return name.equals("row") ? new ByHeader() : value(name, variables);
    }

    @Override
    public boolean isEmpty() {
        return false;
    }

    private TemplateModel value(String name, Set<String> names) {
        (names.contains(name) ? known : unknown).add(name);
        return new SimpleScalar("1");
    }

    private final class ByHeader implements TemplateHashModel {
        @Override
        public TemplateModel get(String header) {
            return value(header, headers);
        }

        @Override
        public boolean isEmpty() {
            return false;
        }
    }
}
