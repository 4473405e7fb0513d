package dev.quoin.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Templates see a view by its methods without arguments, and what is empty as missing. */
class ViewWrapperTest {
    /** A view with something of each kind. */
    public record View(
            String name,
            int count,
            boolean round,
            List<Part> parts,
            Map<String, String> words,
            Optional<Part> first,
            Optional<Part> none,
            OptionalDouble dose,
            OptionalDouble unknown,
            Change.What what) {
        /** Worked out, not held. */
        public double half() {
            return count / 2.0;
        }
    }

    /** A view in a view. */
    public record Part(String file) {}

    private static final View VIEW = new View(
            "Tobias & Co",
            3,
            true,
            List.of(new Part("a"), new Part("b")),
            Map.of("lens", "long-200"),
            Optional.of(new Part("a")),
            Optional.empty(),
            OptionalDouble.of(0.5),
            OptionalDouble.empty(),
            Change.What.JIG);

    private static String written(String template, Map<String, Object> model) throws IOException, TemplateException {
        Configuration templates = new Configuration(Configuration.VERSION_2_3_35);
        templates.setObjectWrapper(new ViewWrapper());
        templates.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        templates.setLogTemplateExceptions(false);
        StringWriter out = new StringWriter();
        new Template("test", template, templates).process(model, out);
        return out.toString();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            ${view.name}                                        | Tobias & Co
            ${view.count + 1}                                   | 4
            ${view.half}                                        | 1.5
            ${view.round?then('yes', 'no')}                     | yes
            <#list view.parts as part>${part.file};</#list>     | a;b;
            ${view.parts?size}${view.parts[1].file}             | 2b
            ${view.words.lens}                                  | long-200
            ${view.first.file}                                  | a
            ${view.none???then('there', 'missing')}             | missing
            ${view.dose}                                        | 0.5
            ${view.unknown???then('there', 'missing')}          | missing
            ${view.what.word} ${view.what.name}                 | jig JIG
            ${view.parts?filter(p -> p.file == 'b')?size}       | 1
            """)
    void aPropertyIsSeen(String template, String written) throws Exception {
        assertEquals(written, written(template, Map.of("view", VIEW)));
    }

    @ParameterizedTest
    @CsvSource({"${view.nosuch}, nosuch", "${view.parts[0].nosuch}, nosuch", "${view.equals}, equals"})
    void aPropertyThatThereIsNotIsAFaultOfTheTemplate(String template, String name) {
        TemplateException fault = assertThrows(TemplateException.class, () -> written(template, Map.of("view", VIEW)));
        assertTrue(fault.getMessage().contains("for " + name), fault.getMessage());
    }

    @Test
    void figuresAndRowsRefuseWhatTheyAreNotFor() throws Exception {
        Map<String, Object> functions = TemplateFunctions.all();
        assertEquals("2.5 1 min 30 s", written("${figures.plain(2.5)} ${figures.time(90)}", functions));
        for (String wrong : List.of("${figures.plain('x')}", "${figures.time()}", "${slotRows.loading(2)}")) {
            assertThrows(TemplateException.class, () -> written(wrong, functions), wrong);
        }
    }
}
