package dev.quoin.art;

import dev.quoin.drawing.Element;
import dev.quoin.geometry.Decimals;
import dev.quoin.lettering.FitRequest;
import dev.quoin.lettering.FitResult;
import dev.quoin.lettering.Fitted;
import dev.quoin.lettering.Fitter;
import dev.quoin.lettering.FontSet;
import dev.quoin.lettering.MissingCharacters;
import dev.quoin.lettering.TooLong;
import dev.quoin.problem.Quoted;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A text that is sized to its space.
 *
 * @param request the space, in the text's frame
 * @param templateLines how many lines the template itself has
 * @param sameSize which other items share its size, if any do
 */
record FittedLettering(
        TextSource text,
        FontSet fonts,
        FitRequest request,
        int templateLines,
        Optional<SameSize> sameSize,
        Fitter fitter)
        implements Lettering {
    @Override
    public Optional<Lettered> set(Merging row, Element element) {
        Optional<String> value = row.text(text, element).map(String::strip);
        if (value.isEmpty()) {
            return Optional.empty();
        }
        if (!request.keepsLines(value.get())) {
            row.joinLines(text, value.get());
        }
        FitResult result = fitter.fit(value.get(), fonts, limited(row.limit(element)));
        if (result instanceof Fitted fitted) {
            sameSize.filter(with -> !fitted.outline().isEmpty())
                    .ifPresent(with -> row.add(new SharedSize(with, element.place(), fitted.capHeight())));
            return Optional.of(new Lettered(fitted.outline(), marked(fitted)));
        }
        if (result instanceof MissingCharacters missing) {
            row.error(text, element, missing.message(), missing.remedy());
        } else if (result instanceof TooLong tooLong) {
            row.error(text, element, message(value.get(), tooLong), remedy());
        }
        return Optional.empty();
    }

    @Override
    public TextSource source() {
        return text;
    }

    @Override
    public boolean strokes() {
        return fonts.strokes();
    }

    private FitRequest limited(OptionalDouble greatest) {
        return greatest.isPresent() && sameSize.isPresent() ? request.withGreatest(greatest.getAsDouble()) : request;
    }

    private MarkedText marked(Fitted fitted) {
        return new MarkedText(
                String.join("\n", fitted.lines()),
                fitted.capHeight(),
                fitted.lines().size() > templateLines,
                fitted.squeeze());
    }

    private String message(String value, TooLong tooLong) {
        return Quoted.of(value) + " is too long for its box: capitals would be "
                + Decimals.text(tooLong.capHeight(), 2) + " mm high, and " + Decimals.text(request.leastCapHeight(), 2)
                + " mm is the least";
    }

    private String remedy() {
        return request.mostLines() > 1 ? "shorten it" : "shorten it or allow two lines";
    }
}
