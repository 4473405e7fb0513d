package dev.quoin.art;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Which items share the size of a text: {@code data-same-size}. */
public enum SameSize {
    PLATE,
    ORDER;

    static List<String> words() {
        return Stream.of(values()).map(SameSize::word).toList();
    }

    static SameSize of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
