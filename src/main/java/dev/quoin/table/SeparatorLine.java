package dev.quoin.table;

import java.io.IOException;
import java.io.Reader;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A first line that is no row but says what separates the cells, {@code sep=;}: some spreadsheets write and read it. */
final class SeparatorLine {
    private static final Pattern FORM = Pattern.compile("sep=([^\\r\\n])|\"sep=([^\\r\\n])\"");
    private static final int LONGEST = "\"sep=;\"".length();

    private SeparatorLine() {}

    /** What it says, if the text begins with such a line. */
    static Optional<Character> find(Reader text) throws IOException {
        StringBuilder line = new StringBuilder();
        int c = text.read();
        while (c >= 0 && c != '\r' && c != '\n' && line.length() <= LONGEST) {
            line.append((char) c);
            c = text.read();
        }
        Matcher form = FORM.matcher(line);
        return form.matches()
                ? Optional.of((form.group(1) == null ? form.group(2) : form.group(1)).charAt(0))
                : Optional.empty();
    }
}
