package dev.quoin.code;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * GS1 element strings: application identifiers with their values, as written for people in brackets.
 *
 * @param elements in the order of the content; at least one
 */
record ElementString(List<Element> elements) {
    /** What ends an element of variable length, as scanners transmit it (GS1 General Specifications, 7.8.3). */
    static final char SEPARATOR = '\u001D';

    private static final Pattern ELEMENT = Pattern.compile("\\((\\d{2,4})\\)((?:(?!\\(\\d{2,4}\\)).)*)");

    /**
     * One element.
     *
     * @param identifier its application identifier
     * @param value what follows, its check digit included
     */
    record Element(ApplicationIdentifier identifier, String value) {}

    /** Reads {@code (01)09501101530003(10)AB-123}, and checks each value against its identifier. */
    static ElementString parse(String content) throws RefusalException {
        List<Element> elements = new ArrayList<>();
        Matcher matcher = ELEMENT.matcher(content.strip());
        int end = 0;
        while (matcher.lookingAt()) {
            ApplicationIdentifier identifier = ApplicationIdentifier.of(matcher.group(1));
            identifier.check(matcher.group(2));
            elements.add(new Element(identifier, matcher.group(2)));
            end = matcher.end();
            matcher.region(end, content.strip().length());
        }
        if (elements.isEmpty() || end < content.strip().length()) {
            throw new RefusalException(
                    "'" + content + "' is not written as GS1 elements",
                    "put each application identifier in brackets before its value, as in (01)09501101530003(10)AB-123");
        }
        return new ElementString(List.copyOf(elements));
    }

    /** What a scanner reads: no brackets, a separator only after an element of variable length that is not the last. */
    String transmitted() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < elements.size(); i++) {
            Element element = elements.get(i);
            text.append(element.identifier().code()).append(element.value());
            if (i < elements.size() - 1 && !element.identifier().hasPredefinedLength()) {
                text.append(SEPARATOR);
            }
        }
        return text.toString();
    }
}
