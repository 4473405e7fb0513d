package dev.quoin.paper;

import freemarker.template.SimpleScalar;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateNumberModel;
import java.util.Map;
import java.util.function.DoubleFunction;

/** What templates can call: {@code figures.plain(x)} and the like, {@code slotRows.loading(plate)}. */
final class TemplateFunctions {
    private TemplateFunctions() {}

    /** All, by the names that templates know. */
    static Map<String, Object> all() {
        Figures figures = new Figures();
        SlotRows rows = new SlotRows();
        return Map.of(
                "figures",
                Map.of(
                        "plain", figure(figures::plain),
                        "three", figure(figures::three),
                        "milli", figure(figures::milli),
                        "kilo", figure(figures::kilo),
                        "percent", figure(figures::percent),
                        "seconds", figure(figures::seconds),
                        "time", figure(figures::time)),
                "slotRows",
                Map.of(
                        "picture",
                        view(JigPicture.class, rows::picture),
                        "loading",
                        view(PlateView.class, rows::loading)));
    }

    private static TemplateMethodModelEx figure(DoubleFunction<String> text) {
        return arguments -> {
            if (arguments.size() == 1 && arguments.get(0) instanceof TemplateNumberModel number) {
                return new SimpleScalar(text.apply(number.getAsNumber().doubleValue()));
            }
            throw new TemplateModelException("A template must hand over one figure, not " + arguments);
        };
    }

    private static <T> TemplateMethodModelEx view(Class<T> type, Layout<T> layout) {
        return arguments -> {
            if (arguments.size() == 1 && arguments.get(0) instanceof ViewModel model && type.isInstance(model.view())) {
                return layout.of(type.cast(model.view()));
            }
            throw new TemplateModelException("A template must hand over one " + type + ", not " + arguments);
        };
    }

    /** Lays a view out as markup. */
    private interface Layout<T> {
        TemplateModel of(T view) throws TemplateModelException;
    }
}
