package dev.quoin.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * White space of one line of text, run by run: SVG 1.1, section 10.15, {@code xml:space}. By default line ends are
 * removed, tabs become spaces, several spaces become one, and none stays at either end; preserved, line ends and tabs
 * become spaces. Placeholders are left alone, and count as a letter.
 */
final class WhiteSpace {
    private boolean afterSpace = true;

    /** The next run of the line, as it is to be set; a space at the line's end may remain. */
    VariableText next(VariableText run, boolean preserve) {
        List<VariableText.Part> parts = new ArrayList<>();
        for (VariableText.Part part : run.parts()) {
            if (part instanceof VariableText.Literal literal) {
                String text = preserve ? preserved(literal.text()) : collapsed(literal.text());
                if (!text.isEmpty()) {
                    afterSpace = text.endsWith(" ");
                    parts.add(new VariableText.Literal(text));
                }
            } else {
                afterSpace = false;
                parts.add(part);
            }
        }
        return new VariableText(List.copyOf(parts));
    }

    /** Without the space at its end. */
    static VariableText trimmed(VariableText run) {
        List<VariableText.Part> parts = new ArrayList<>(run.parts());
        int last = parts.size() - 1;
        if (last >= 0 && parts.get(last) instanceof VariableText.Literal literal) {
            String text = literal.text().stripTrailing();
            parts.remove(last);
            if (!text.isEmpty()) {
                parts.add(new VariableText.Literal(text));
            }
        }
        return new VariableText(List.copyOf(parts));
    }

    static boolean isBlank(VariableText run) {
        return run.isConstant() && run.source().isBlank();
    }

    /** Two runs as one; letters that meet are joined. */
    static VariableText joined(VariableText first, VariableText second) {
        List<VariableText.Part> parts = new ArrayList<>(first.parts());
        for (VariableText.Part part : second.parts()) {
            int last = parts.size() - 1;
            if (last >= 0
                    && parts.get(last) instanceof VariableText.Literal before
                    && part instanceof VariableText.Literal after) {
                parts.set(last, new VariableText.Literal(before.text() + after.text()));
            } else {
                parts.add(part);
            }
        }
        return new VariableText(List.copyOf(parts));
    }

    private static String preserved(String text) {
        return text.replace("\r\n", " ").replace('\n', ' ').replace('\r', ' ').replace('\t', ' ');
    }

    private String collapsed(String text) {
        StringBuilder kept = new StringBuilder();
        boolean space = afterSpace;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n' || c == '\r') {
                continue;
            }
            boolean isSpace = c == ' ' || c == '\t';
            if (!isSpace || !space) {
                kept.append(isSpace ? ' ' : c);
            }
            space = isSpace;
        }
        return kept.toString();
    }
}
