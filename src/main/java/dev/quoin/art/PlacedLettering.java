package dev.quoin.art;

import dev.quoin.drawing.Element;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Path;
import dev.quoin.lettering.MissingCharacters;
import dev.quoin.lettering.Typeset;
import dev.quoin.lettering.TypesetText;
import dev.quoin.lettering.Typesetter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A text that stands where and as large as the template says. */
record PlacedLettering(List<Line> lines, Typesetter typesetter) implements Lettering {
    @Override
    public Optional<Lettered> set(Merging row, Element element) {
        Path.Builder outline = Path.builder();
        List<String> said = new ArrayList<>();
        double capHeight = 0;
        for (Line line : lines) {
            Optional<LineSet> set = set(line, row, element);
            if (set.isEmpty()) {
                return Optional.empty();
            }
            outline.append(set.get().outline());
            said.add(set.get().text());
            capHeight = Math.max(capHeight, set.get().capHeight());
        }
        String text = String.join("\n", said);
        return Optional.of(new Lettered(outline.build(), new MarkedText(text, capHeight, false, 1)));
    }

    @Override
    public TextSource source() {
        List<TextSource> sources = lines.stream()
                .flatMap(line -> line.runs().stream())
                .map(LineRun::text)
                .toList();
        return sources.stream()
                .filter(text -> !text.columns().isEmpty())
                .findFirst()
                .orElse(sources.get(0));
    }

    @Override
    public boolean strokes() {
        return lines.stream()
                .flatMap(line -> line.runs().stream())
                .anyMatch(run -> run.fonts().strokes());
    }

    private Optional<LineSet> set(Line line, Merging row, Element element) {
        Path.Builder outline = Path.builder();
        StringBuilder said = new StringBuilder();
        double pen = 0;
        double capHeight = 0;
        for (LineRun run : line.runs()) {
            Optional<String> text = row.text(run.text(), element).map(value -> trim(value, line, run));
            if (text.isEmpty()) {
                return Optional.empty();
            }
            row.joinLines(run.text(), text.get());
            Typeset set = typesetter.set(text.get(), run.fonts());
            if (set instanceof MissingCharacters missing) {
                row.error(run.text(), element, missing.message(), missing.remedy());
                return Optional.empty();
            }
            TypesetText letters = (TypesetText) set;
            outline.append(letters.outline().transform(new Affine(run.size(), 0, 0, run.size(), pen, 0)));
            pen += letters.advance() * run.size();
            said.append(text.get());
            capHeight = Math.max(capHeight, letters.capHeight() * run.size());
        }
        Affine toPlace = Affine.translate(line.x() - lead(line, pen), line.y());
        return Optional.of(new LineSet(outline.build().transform(toPlace), said.toString(), capHeight));
    }

    /** Blanks at the ends of a line would only push it off its anchor. */
    private static String trim(String text, Line line, LineRun run) {
        boolean first = run == line.runs().get(0);
        boolean last = run == line.runs().get(line.runs().size() - 1);
        String start = first ? text.stripLeading() : text;
        return last ? start.stripTrailing() : start;
    }

    private static double lead(Line line, double advance) {
        return switch (line.anchor()) {
            case START -> 0;
            case MIDDLE -> advance / 2;
            case END -> advance;
        };
    }

    private record LineSet(Path outline, String text, double capHeight) {}
}
