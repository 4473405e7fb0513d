package dev.quoin.verify;

import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** The text of a plate file, of which groups can be taken to the letter. */
record GroupText(String text) {
    private static final String END = "</g>";

    static GroupText of(byte[] file) {
        return new GroupText(new String(file, StandardCharsets.UTF_8));
    }

    /** The marks of an item in a step, as they are written; nothing if the file has no such group. */
    Optional<String> group(int step, int item) {
        String id = "<g id=\"step-" + step + "-item-";
        for (int at = text.indexOf(id); at >= 0; at = text.indexOf(id, at + 1)) {
            int end = text.indexOf('"', at + id.length());
            if (end > 0 && isNumber(text.substring(at + id.length(), end), item)) {
                return Optional.of(text.substring(at, text.indexOf(END, end)));
            }
        }
        return Optional.empty();
    }

    private static boolean isNumber(String digits, int number) {
        return digits.matches("\\d{1,9}") && Integer.parseInt(digits) == number;
    }
}
