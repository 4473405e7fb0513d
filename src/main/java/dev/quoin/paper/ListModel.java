package dev.quoin.paper;

import freemarker.template.TemplateModel;
import freemarker.template.TemplateSequenceModel;
import java.util.List;

/** A list, as templates see it. */
record ListModel(List<?> list, ViewWrapper wrapper) implements TemplateSequenceModel {
    @Override
    public TemplateModel get(int index) {
        return index >= 0 && index < list.size() ? wrapper.wrap(list.get(index)) : null;
    }

    @Override
    public int size() {
        return list.size();
    }
}
