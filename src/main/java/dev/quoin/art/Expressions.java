package dev.quoin.art;

import dev.quoin.drawing.VariableText;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.problem.Suggestion;
import freemarker.core.InvalidReferenceException;
import freemarker.core.NonMethodException;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.SimpleScalar;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * Compiles the placeholders of templates, each to a small FreeMarker template of its own. Nothing is escaped: values go
 * into attributes and texts as values, never as markup. Templates may come from strangers: no class of ours or the
 * platform's can be reached, and no other template.
 */
final class Expressions {
    /** Longer results are refused, characters. */
    static final int MOST_CHARACTERS = 10_000;

    /** Numbers in the language's own digits and decimal sign, but never 2,026 for a year. */
    private static final String UNGROUPED = "0.################";

    /** Names that FreeMarker reads as something else, also where a column is called so (its manual, "Reserved names"). */
    private static final Set<String> RESERVED = Set.of("true", "false", "gt", "gte", "lt", "lte", "as", "in", "using");

    /** What prints a date or a number in a form of its own, and what a text, which has no form, cannot do. */
    private static final String FORM = "?string";

    private final Columns columns;
    private final Lazy<Configuration> configuration;

    Expressions(Columns columns, Locale locale) {
        this.columns = columns;
        this.configuration = new Lazy<>(() -> configuration(locale));
    }

    private static Configuration configuration(Locale locale) {
        Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
        configuration.setLocale(locale);
        configuration.setTimeZone(TypedDate.ZONE);
        configuration.setNumberFormat(UNGROUPED);
        configuration.setCustomDateFormats(Map.of(AsTypedFormat.NAME, AsTypedFormat.FACTORY));
        configuration.setDateFormat("@" + AsTypedFormat.NAME);
        configuration.setSharedVariable(Initials.NAME, new Initials());
        configuration.setBooleanFormat("c");
        configuration.setURLEscapingCharset(StandardCharsets.UTF_8.name());
        configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        configuration.setAPIBuiltinEnabled(false);
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        configuration.setLocalizedLookup(false);
        return configuration;
    }

    /** Compiles a text; what is wrong with its placeholders is a problem at {@code place}. */
    TextSource compile(VariableText text, Place place, Problems problems) {
        return compile(text, UnaryOperator.identity(), place, problems);
    }

    /** The same for a {@code style} attribute, in which a placeholder gives a value and nothing more. */
    TextSource compileStyle(VariableText text, Place place, Problems problems) {
        return compile(text, StyleValue::only, place, problems);
    }

    private TextSource compile(
            VariableText text, UnaryOperator<TextSource.Part> guard, Place place, Problems problems) {
        List<TextSource.Part> parts = new ArrayList<>();
        Set<String> known = new LinkedHashSet<>();
        Set<String> unknown = new LinkedHashSet<>();
        for (VariableText.Part part : text.parts()) {
            if (part instanceof VariableText.Literal literal) {
                MistakenPlaceholders.tell(literal.text(), columns, place, problems);
                parts.add(row -> literal.text());
            } else if (part instanceof VariableText.Placeholder placeholder) {
                TrialModel trial = columns.trial();
                compile(placeholder.expression(), trial, place, problems)
                        .map(guard)
                        .ifPresent(parts::add);
                known.addAll(trial.known());
                unknown.addAll(trial.unknown());
            }
        }
        for (String name : unknown) {
            problems.error(
                    place,
                    "'" + text.source() + "' uses '" + name + "', and the order has no such column",
                    name.equals("serial")
                            ? "give --serial-start for serial numbers"
                            : Suggestion.remedy(name, columns.names()));
        }
        return new TextSource(parts, columns.indexes(known));
    }

    private Optional<TextSource.Part> compile(String expression, TrialModel trial, Place place, Problems problems) {
        String source = "${" + expression + "}";
        if (isColumn(expression) && expression.chars().allMatch(c -> c < 0x80)) {
            trial.get(expression);
            return Optional.of(column(expression, new Lazy<>(() -> parseName(source)), source));
        }
        try {
            Template template = parse(source);
            tryOut(template, trial);
            List<Integer> used = columns.indexes(trial.known());
            return Optional.of(
                    isColumn(expression)
                            ? column(expression, new Lazy<>(() -> template), source)
                            : row -> process(template, source, used, row));
        } catch (ParseException e) {
            problems.error(
                    place,
                    "the placeholder " + source + " cannot be read: " + firstLine(e.getEditorMessage()),
                    "correct it as FreeMarker's expressions are written");
            return Optional.empty();
        }
    }

    /** Whether the expression is a column's name and nothing else, as most are. */
    private boolean isColumn(String expression) {
        return columns.ofVariable(expression).isPresent() && !RESERVED.contains(expression);
    }

    /** A column's text can be had without working anything out; a date, or nothing, is left to FreeMarker. */
    private TextSource.Part column(String variable, Lazy<Template> template, String source) {
        List<Integer> used = columns.indexes(Set.of(variable));
        return row -> row.get(variable) instanceof SimpleScalar text
                        && text.getAsString().length() <= MOST_CHARACTERS
                ? text.getAsString()
                : process(template.get(), source, used, row);
    }

    /** Of a name of ASCII letters, which can always be read; which other letters FreeMarker takes into names, it knows. */
    private Template parseName(String source) {
        try {
            return parse(source);
        } catch (ParseException e) {
            throw new IllegalStateException(source, e);
        }
    }

    private Template parse(String source) throws ParseException {
        try {
            return new Template("placeholder", new StringReader(source), configuration.get());
        } catch (ParseException e) {
            throw e;
        } catch (IOException e) {
            throw new IllegalStateException("a string cannot fail to be read", e);
        }
    }

    /** Works the placeholder out once, so that a column that the order lacks is told once, and not for every row. */
    private static void tryOut(Template template, TrialModel trial) {
        try {
            template.process(trial, new BoundedWriter());
        } catch (TemplateException | IOException expected) {
            // Made-up values need not suit the expression; only the names that it asks for matter here.
        }
    }

    private String process(Template template, String source, List<Integer> used, RowModel row) throws MergeFailure {
        BoundedWriter result = new BoundedWriter();
        try {
            template.process(row, result);
        } catch (InvalidReferenceException e) {
            throw missing(e.getBlamedExpressionString(), source, used);
        } catch (TemplateException e) {
            throw notWorkedOut(e, source, used);
        } catch (IOException tooLong) {
            throw new MergeFailure(
                    source + " gives more than " + MOST_CHARACTERS + " characters",
                    "shorten what it gives",
                    first(used));
        }
        return result.toString();
    }

    private MergeFailure missing(String blamed, String source, List<Integer> used) {
        String what = blamed == null ? source : blamed;
        OptionalInt own = columns.ofVariable(what);
        return new MergeFailure(
                what + " is empty, and the template uses it",
                "fill it in, or permit it: ${" + what + "!}",
                own.isPresent() ? own : first(used));
    }

    private static MergeFailure notWorkedOut(TemplateException e, String source, List<Integer> used) {
        String blamed = e.getBlamedExpressionString();
        if (e instanceof NonMethodException && blamed != null && blamed.endsWith(FORM)) {
            return new MergeFailure(
                    source + " needs a date or a number, and " + blamed.substring(0, blamed.length() - FORM.length())
                            + " is a text",
                    "say with --date-format how its dates are typed, or write ?number before " + FORM,
                    first(used));
        }
        return new MergeFailure(
                source + " cannot be worked out: " + withoutWrapper(firstLine(e.getMessageWithoutStackTop())),
                "correct the value or the placeholder",
                first(used));
    }

    private static OptionalInt first(List<Integer> used) {
        return used.isEmpty() ? OptionalInt.empty() : OptionalInt.of(used.get(0));
    }

    /** FreeMarker names its own classes, and ends a line with a colon before the next. */
    private static String withoutWrapper(String message) {
        return message.replaceAll(" \\(wrapper: [^)]*\\)|:$", "");
    }

    private static String firstLine(String message) {
        return message == null ? "no reason given" : message.lines().findFirst().orElse("no reason given");
    }

    /** Takes so many characters and no more. */
    private static final class BoundedWriter extends Writer {
        private final StringWriter text = new StringWriter();

        @Override
        public void write(char[] characters, int from, int count) throws IOException {
            if (text.getBuffer().length() + count > MOST_CHARACTERS) {
                throw new IOException("too long");
            }
            text.write(characters, from, count);
        }

        @Override
        public void flush() {
            // Nothing is held back.
        }

        @Override
        public void close() {
            // A string needs no closing.
        }

        @Override
        public String toString() {
            return text.toString();
        }
    }
}
