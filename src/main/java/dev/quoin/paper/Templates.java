package dev.quoin.paper;

import freemarker.core.HTMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.Writer;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** The templates of the papers, beside this class as resources; every value is escaped for HTML. */
public final class Templates {
    private static final Configuration TEMPLATES = configuration();
    private static final Map<String, Object> FUNCTIONS = TemplateFunctions.all();

    private Templates() {}

    /**
     * Lays a view into a template.
     *
     * @throws IOException if the writer fails
     */
    static void write(String name, Map<String, Object> view, Writer out) throws IOException {
        Template template = TEMPLATES.getTemplate(name);
        Map<String, Object> model = new HashMap<>(view);
        model.putAll(FUNCTIONS);
        try {
            template.process(model, out);
        } catch (TemplateException e) {
            // Views are complete by their types, so this is a fault of a template, never of the user's files.
            throw new IllegalStateException(name, e);
        }
    }

    /**
     * Reads a template, to have it ready.
     *
     * @throws IOException if it cannot be read
     */
    public static void read(String name) throws IOException {
        TEMPLATES.getTemplate(name);
    }

    private static Configuration configuration() {
        var version = Configuration.VERSION_2_3_35;
        Configuration templates = new Configuration(version);
        templates.setClassLoaderForTemplateLoading(Templates.class.getClassLoader(), "dev/quoin/paper");
        templates.setDefaultEncoding("UTF-8");
        templates.setLocale(Locale.ROOT);
        templates.setNumberFormat("computer");
        templates.setOutputFormat(HTMLOutputFormat.INSTANCE);
        templates.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        templates.setLogTemplateExceptions(false);
        templates.setObjectWrapper(new ViewWrapper());
        return templates;
    }
}
