package dev.quoin.art;

import dev.quoin.drawing.DrawnText;
import dev.quoin.drawing.Element;
import dev.quoin.drawing.TextLine;
import dev.quoin.drawing.TextPath;
import dev.quoin.drawing.TextRun;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Area;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import dev.quoin.lettering.FitRequest;
import dev.quoin.lettering.Fitter;
import dev.quoin.lettering.FontLibrary;
import dev.quoin.lettering.FontSet;
import dev.quoin.lettering.TextTrack;
import dev.quoin.lettering.Typesetter;
import dev.quoin.lettering.VerticalAlign;
import dev.quoin.problem.Problems;
import dev.quoin.problem.Suggestion;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Compiles how a text is laid out. All text is set here, by our own lettering: what Batik makes of text serves the tests
 * only, which hold the one against the other.
 */
final class LetteringCompiler {
    private static final double LEAST_HEIGHT = 1;
    private static final double HIGHEST = 1_000;
    private static final int MOST_LINES = 20;
    private static final List<String> NOT_ALONG = List.of("same-size", "lines", "align");

    private final FontLibrary fonts;
    private final Expressions expressions;
    private final Typesetter typesetter = new Typesetter();
    private final Fitter fitter = new Fitter(typesetter);

    LetteringCompiler(FontLibrary fonts, Expressions expressions) {
        this.fonts = fonts;
        this.expressions = expressions;
    }

    /**
     * The layout of a text; nothing if it has errors.
     *
     * @param shapes the drawing's shapes by id, in item coordinates
     */
    Optional<Lettering> compile(DrawnText text, TextFrame frame, Map<String, Path> shapes, Problems problems) {
        int before = problems.errors();
        List<Line> lines = lines(text, frame, problems);
        if (problems.errors() > before) {
            return Optional.empty();
        }
        if (text.along().isPresent()) {
            return along(text.element(), lines.get(0), text.along().get(), frame, problems);
        }
        Optional<String> box = new DataAttributes(text.element(), problems).text("fit");
        if (box.isEmpty()) {
            warnOfSizes(text.element(), problems);
            return problems.errors() > before ? Optional.empty() : Optional.of(new PlacedLettering(lines, typesetter));
        }
        Path shape = shapes.get(box.get());
        if (shape == null) {
            problems.error(
                    text.element().place(),
                    text.element().describe() + ": data-fit names '" + box.get() + "', and no shape has that id",
                    Suggestion.remedy(box.get(), shapes.keySet()));
            return Optional.empty();
        }
        Area space = new Area(shape, FillRule.NON_ZERO).transform(frame.toItem().inverse());
        return fitted(text.element(), lines, space, problems).map(fitted -> fitted);
    }

    /** Only a text that fits a shape, or runs along a path, is sized. */
    private static void warnOfSizes(Element element, Problems problems) {
        for (String name : List.of("min-height", "max-height")) {
            if (element.data(name).isPresent()) {
                problems.warning(
                        element.place(),
                        element.describe() + " has data-" + name + ", which does nothing without data-fit",
                        "name the shape to fit into with data-fit, or take it off");
            }
        }
    }

    private Optional<Lettering> along(Element element, Line line, TextPath along, TextFrame frame, Problems problems) {
        int before = problems.errors();
        DataAttributes data = new DataAttributes(element, problems);
        Optional<String> named = data.text("fit");
        if (named.isPresent() && !named.get().equals(along.id())) {
            problems.error(
                    element.place(),
                    element.describe() + ": data-fit names '" + named.get() + "', and the text runs along '"
                            + along.id() + "'",
                    "name the path that it runs along");
        }
        for (String name : NOT_ALONG) {
            if (element.data(name).isPresent()) {
                problems.error(
                        element.place(),
                        element.describe() + ": a text along a path has no data-" + name,
                        "take it off");
            }
        }
        boolean isFitted = named.isPresent()
                || element.data("min-height").isPresent()
                || element.data("max-height").isPresent();
        Optional<PathLettering.PathFit> fit =
                isFitted ? Optional.of(pathFit(element, line, data, problems)) : Optional.empty();
        TextTrack track = new TextTrack(along.path().transform(Affine.scale(frame.scale(), -frame.scale())));
        return problems.errors() > before
                ? Optional.empty()
                : Optional.of(new PathLettering(
                        line.runs(), track, along.start() * frame.scale(), line.anchor(), fit, typesetter));
    }

    private static PathLettering.PathFit pathFit(Element element, Line line, DataAttributes data, Problems problems) {
        double asDrawn = line.runs().stream()
                .mapToDouble(run -> run.size() * run.fonts().capHeight())
                .max()
                .orElse(LEAST_HEIGHT);
        Heights heights = heights(element, asDrawn, data, problems);
        return new PathLettering.PathFit(
                heights.least(),
                heights.greatest(),
                data.number("inset", 0, HIGHEST).orElse(0),
                data.number("squeeze", FitRequest.NARROWEST, 1).orElse(1));
    }

    private List<Line> lines(DrawnText text, TextFrame frame, Problems problems) {
        List<Line> lines = new ArrayList<>();
        for (TextLine line : text.lines()) {
            List<LineRun> runs = new ArrayList<>();
            for (TextRun run : line.runs()) {
                TextSource source =
                        expressions.compile(run.content(), text.element().place(), problems);
                Optional<FontSet> set = fonts.select(run.font(), text.element().place(), problems);
                set.ifPresent(found -> runs.add(new LineRun(found, run.size() * frame.scale(), source)));
            }
            lines.add(new Line(line.x() * frame.scale(), -line.y() * frame.scale(), line.anchor(), runs));
        }
        return lines;
    }

    private Optional<FittedLettering> fitted(Element element, List<Line> lines, Area space, Problems problems) {
        List<LineRun> runs =
                lines.stream().flatMap(line -> line.runs().stream()).toList();
        if (runs.stream().map(LineRun::fonts).distinct().count() != 1) {
            problems.error(
                    element.place(),
                    element.describe() + ": a fitted text has one font, and this has several, or none",
                    "give all of it one font, or split it into two texts");
            return Optional.empty();
        }
        int before = problems.errors();
        FitRequest request = request(element, lines.get(0), runs.get(0), space, problems);
        Optional<SameSize> sameSize = new DataAttributes(element, problems)
                .word("same-size", SameSize.words())
                .map(SameSize::of);
        return problems.errors() > before
                ? Optional.empty()
                : Optional.of(new FittedLettering(
                        joined(lines), runs.get(0).fonts(), request, lines.size(), sameSize, fitter));
    }

    private static FitRequest request(Element element, Line line, LineRun run, Area space, Problems problems) {
        DataAttributes data = new DataAttributes(element, problems);
        Heights heights = heights(element, run.size() * run.fonts().capHeight(), data, problems);
        return new FitRequest(
                space,
                line.anchor(),
                data.word("align", List.of("top", "middle", "bottom"))
                        .map(word -> VerticalAlign.valueOf(word.toUpperCase(Locale.ROOT)))
                        .orElse(VerticalAlign.MIDDLE),
                data.number("inset", 0, HIGHEST).orElse(0),
                heights.least(),
                OptionalDouble.of(heights.greatest()),
                (int) data.number("lines", 1, MOST_LINES).orElse(1),
                data.number("squeeze", FitRequest.NARROWEST, 1).orElse(1));
    }

    /** How high capitals may be at least and at most, mm. */
    private record Heights(double least, double greatest) {}

    /** No higher than they are drawn, unless it is said. */
    private static Heights heights(Element element, double asDrawn, DataAttributes data, Problems problems) {
        double least = data.number("min-height", 0.05, HIGHEST).orElse(LEAST_HEIGHT);
        double greatest = data.number("max-height", 0.05, HIGHEST).orElse(Math.max(asDrawn, least));
        if (greatest < least) {
            problems.error(
                    element.place(),
                    element.describe() + ": data-max-height is less than data-min-height",
                    "make it at least as large");
        }
        return new Heights(least, Math.max(least, greatest));
    }

    /** Lines of the template become one text with line breaks. */
    private static TextSource joined(List<Line> lines) {
        List<TextSource.Part> parts = new ArrayList<>();
        List<Integer> columns = new ArrayList<>();
        for (Line line : lines) {
            if (!parts.isEmpty()) {
                parts.add(row -> "\n");
            }
            for (LineRun run : line.runs()) {
                parts.addAll(run.text().parts());
                columns.addAll(run.text().columns());
            }
        }
        return new TextSource(parts, columns);
    }
}
