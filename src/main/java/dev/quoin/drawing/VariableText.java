package dev.quoin.drawing;

import java.util.ArrayList;
import java.util.List;

/** Text with {@code ${...}} placeholders in it, taken apart. */
public record VariableText(List<Part> parts) {
    /** A stretch of a {@link VariableText}. */
    public sealed interface Part permits Literal, Placeholder {}

    /** Text that stays as it is. */
    public record Literal(String text) implements Part {}

    /** What stands between <code>${</code> and <code>}</code>. */
    public record Placeholder(String expression) implements Part {}

    /**
     * Takes text apart. A brace inside a string or inside another pair of braces does not end a placeholder.
     *
     * @throws IllegalArgumentException if a placeholder is not closed; its message says which
     */
    public static VariableText parse(String text) {
        List<Part> parts = new ArrayList<>();
        int from = 0;
        for (int open = text.indexOf("${"); open >= 0; open = text.indexOf("${", from)) {
            if (open > from) {
                parts.add(new Literal(text.substring(from, open)));
            }
            int close = closingBrace(text, open + 2);
            parts.add(new Placeholder(text.substring(open + 2, close)));
            from = close + 1;
        }
        if (from < text.length()) {
            parts.add(new Literal(text.substring(from)));
        }
        return new VariableText(List.copyOf(parts));
    }

    public boolean isConstant() {
        return parts.stream().allMatch(Literal.class::isInstance);
    }

    /** The text as it was written. */
    public String source() {
        StringBuilder source = new StringBuilder();
        for (Part part : parts) {
            if (part instanceof Literal literal) {
                source.append(literal.text());
            } else if (part instanceof Placeholder placeholder) {
                source.append("${").append(placeholder.expression()).append('}');
            }
        }
        return source.toString();
    }

    private static int closingBrace(String text, int from) {
        int depth = 1;
        char quote = 0;
        for (int i = from; i < text.length(); i++) {
            char c = text.charAt(i);
            if (quote != 0) {
                if (c == '\\') {
                    i++;
                } else if (c == quote) {
                    quote = 0;
                }
            } else if (c == '"' || c == '\'') {
                quote = c;
            } else if (c == '{') {
                depth++;
            } else if (c == '}' && --depth == 0) {
                return i;
            }
        }
        throw new IllegalArgumentException("the placeholder '" + text.substring(from - 2) + "' has no closing brace");
    }
}
