package dev.quoin.paper;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The kinds of file that a paper can be written as. */
public enum PaperKind {
    HTML("html"),
    PDF("pdf");

    private final String word;

    PaperKind(String word) {
        this.word = word;
    }

    /** Its name in settings, and the ending of its files' names. */
    public String word() {
        return word;
    }

    public static Optional<PaperKind> named(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(PaperKind::word).toList();
    }
}
