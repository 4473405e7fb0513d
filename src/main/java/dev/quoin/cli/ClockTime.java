package dev.quoin.cli;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A time as read off a clock: {@code m:ss} or {@code h:mm:ss}. */
final class ClockTime {
    private static final Pattern TIME = Pattern.compile("(?:(\\d{1,3}):([0-5]\\d)|(\\d{1,4})):([0-5]\\d)");

    private ClockTime() {}

    /** In seconds, more than 0; nothing if it is no such time. */
    static OptionalDouble parse(String text) {
        Matcher time = TIME.matcher(text.strip());
        if (!time.matches()) {
            return OptionalDouble.empty();
        }
        int minutes = time.group(3) == null
                ? Integer.parseInt(time.group(1)) * 60 + Integer.parseInt(time.group(2))
                : Integer.parseInt(time.group(3));
        int seconds = minutes * 60 + Integer.parseInt(time.group(4));
        return seconds > 0 ? OptionalDouble.of(seconds) : OptionalDouble.empty();
    }
}
