package dev.quoin.lettering;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Cuts a text where a line may end: after spaces and hyphens, between ideographs (the platform's line rules, after
 * UAX #14); and where it must, at a line break of its own.
 *
 * @param pieces the pieces, each with the white space that follows it
 * @param forced for each piece, whether a line must end after it
 */
record LineBreaker(List<String> pieces, List<Boolean> forced) {
    /** The text cut up; more forced breaks than {@code mostLines} allows count as spaces. */
    static LineBreaker of(String text, int mostLines) {
        String lines = plain(text);
        boolean allowed = breaks(lines) < mostLines;
        List<String> pieces = new ArrayList<>();
        List<Boolean> forced = new ArrayList<>();
        for (String line : (allowed ? lines : lines.replace('\n', ' ')).split("\n", -1)) {
            if (mostLines == 1 && !line.isEmpty()) {
                // Where it could be broken does not matter.
                pieces.add(line);
                forced.add(true);
                continue;
            }
            BreakIterator breaks = Rules.ofLines();
            breaks.setText(line);
            int start = breaks.first();
            for (int end = breaks.next(); end != BreakIterator.DONE; end = breaks.next()) {
                pieces.add(line.substring(start, end));
                forced.add(end == line.length());
                start = end;
            }
        }
        return new LineBreaker(pieces, forced);
    }

    /** How many line breaks a text has inside. */
    static int breaks(String text) {
        boolean none = text.indexOf('\n') < 0 && text.indexOf('\r') < 0;
        return none ? 0 : (int) plain(text).chars().filter(c -> c == '\n').count();
    }

    private static String plain(String text) {
        return text.strip().replace("\r\n", "\n").replace('\r', '\n');
    }

    int size() {
        return pieces.size();
    }

    /** The text of a line made of these pieces. */
    String line(int from, int to) {
        return String.join("", pieces.subList(from, to)).strip();
    }

    /** Whether these pieces may stand in one line. */
    boolean mayJoin(int from, int to) {
        return !forced.subList(from, to - 1).contains(true);
    }

    /** Most texts need no rules, which take a while to load. */
    private static final class Rules {
        private static final BreakIterator LINES = BreakIterator.getLineInstance(Locale.ROOT);

        private Rules() {}

        /** A clone, since they are not safe for several threads; making them anew takes longer. */
        static BreakIterator ofLines() {
            return (BreakIterator) LINES.clone();
        }
    }
}
