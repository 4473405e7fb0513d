package dev.quoin.paper;

import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;

/** A view, as templates see it: a hash of its properties. */
record ViewModel(Object view, ViewWrapper wrapper) implements TemplateHashModel {
    @Override
    public TemplateModel get(String property) throws TemplateModelException {
        return wrapper.wrap(wrapper.property(view, property));
    }

    @Override
    public boolean isEmpty() {
        return false;
    }
}
