package dev.quoin.art;

import dev.quoin.drawing.SvgDrawing;
import dev.quoin.lettering.FontLibrary;
import dev.quoin.problem.Problems;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Compiles templates: constant artwork once, placeholders each to an expression. */
public final class TemplateCompiler {
    private final Set<String> processes;
    private final FontLibrary fonts;
    private final Columns columns;
    private final Locale locale;

    /**
     * Sets up for the templates of a job.
     *
     * @param processes every process of the shop's recipes
     * @param columns of the order
     * @param locale for dates and numbers in expressions
     */
    public TemplateCompiler(Set<String> processes, FontLibrary fonts, Columns columns, Locale locale) {
        this.processes = processes;
        this.fonts = fonts;
        this.columns = columns;
        this.locale = locale;
    }

    /** A template, or nothing where the drawing has errors. */
    public Optional<Template> compile(String name, SvgDrawing drawing, Problems problems) {
        int before = problems.errors();
        drawing.elements().forEach(element -> DataNames.check(element, problems));
        Expressions expressions = new Expressions(columns, locale);
        PieceCompiler compiler = new PieceCompiler(new ProcessFinder(processes), fonts, expressions, drawing, problems);
        List<Piece> pieces = compiler.compileAll(drawing.draw(problems), problems);
        return problems.errors() > before
                ? Optional.empty()
                : Optional.of(new Template(name, drawing.page(), columns, pieces));
    }
}
