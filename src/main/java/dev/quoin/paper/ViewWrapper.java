package dev.quoin.paper;

import freemarker.template.ObjectWrapper;
import freemarker.template.SimpleHash;
import freemarker.template.SimpleNumber;
import freemarker.template.SimpleScalar;
import freemarker.template.TemplateBooleanModel;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import java.lang.reflect.Method;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Shows views to templates: texts, figures, lists and maps as such, an empty {@code Optional} as what is missing, and all
 * else by its public methods without arguments, each a property of its name. FreeMarker's own wrapper looks through whole
 * classes first, which took a twentieth of a cold start.
 */
final class ViewWrapper implements ObjectWrapper {
    private final Map<Class<?>, Map<String, Method>> known = new ConcurrentHashMap<>();

    @Override
    public TemplateModel wrap(Object value) {
        if (value instanceof TemplateModel model) {
            return model;
        } else if (value instanceof String text) {
            return new SimpleScalar(text);
        } else if (value instanceof Number number) {
            return new SimpleNumber(number);
        } else if (value instanceof Boolean yes) {
            return yes ? TemplateBooleanModel.TRUE : TemplateBooleanModel.FALSE;
        } else if (value instanceof List<?> list) {
            return new ListModel(list, this);
        } else if (value instanceof Map<?, ?> map) {
            return new SimpleHash(map, this);
        } else if (value instanceof Optional<?> optional) {
            return optional.map(this::wrap).orElse(null);
        } else if (value instanceof OptionalDouble optional) {
            return optional.isPresent() ? new SimpleNumber(optional.getAsDouble()) : null;
        }
        return new ViewModel(value, this);
    }

    /**
     * The value of a view's property.
     *
     * @throws TemplateModelException if it has none of this name
     */
    Object property(Object view, String name) throws TemplateModelException {
        try {
            return known.computeIfAbsent(view.getClass(), type -> new ConcurrentHashMap<>())
                    .computeIfAbsent(name, property -> method(view, property))
                    .invoke(view);
        } catch (ReflectiveOperationException | IllegalArgumentException e) {
            throw new TemplateModelException("A template asks " + view.getClass() + " for " + name, e);
        }
    }

    private static Method method(Object view, String name) {
        Class<?> type = view instanceof Enum<?> constant ? constant.getDeclaringClass() : view.getClass();
        try {
            return type.getMethod(name);
        } catch (NoSuchMethodException e) {
            throw new IllegalArgumentException(e);
        }
    }
}
