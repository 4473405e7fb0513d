package dev.quoin.code;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A GS1 application identifier that is in common use (GS1 General Specifications, section 3.2; from memory).
 *
 * @param code its two to four digits
 * @param format what its value looks like
 */
record ApplicationIdentifier(String code, Format format) {
    /** First two digits of those whose length is fixed for good (GS1 General Specifications, 7.8.5; from memory). */
    private static final Set<String> PREDEFINED = Set.of(
            "00", "01", "02", "03", "04", "11", "12", "13", "14", "15", "16", "17", "18", "19", "20", "31", "32", "33",
            "34", "35", "36", "41");

    /** Character set 82 (ISO/IEC 646, invariant part; GS1 General Specifications, figure 7.11-1). */
    private static final String CHARACTERS = "[!\"%&'()*+,\\-./0-9:;<=>?A-Z_a-z]";

    private static final List<Rule> RULES = List.of(
            new Rule("00", new Format(18, 18, Kind.CHECKED)),
            new Rule("0[12]", new Format(14, 14, Kind.CHECKED)),
            new Rule("1[1-367]|15", new Format(6, 6, Kind.DATE)),
            new Rule("20", new Format(2, 2, Kind.DIGITS)),
            new Rule("10|2[12]", new Format(1, 20, Kind.TEXT)),
            new Rule("30|37", new Format(1, 8, Kind.DIGITS)),
            new Rule("24[013]|25[014]", new Format(1, 30, Kind.TEXT)),
            new Rule("242", new Format(1, 6, Kind.DIGITS)),
            new Rule("3[1-6]\\d[0-5]", new Format(6, 6, Kind.DIGITS)),
            new Rule("39[02]\\d", new Format(1, 15, Kind.DIGITS)),
            new Rule("40[013]", new Format(1, 30, Kind.TEXT)),
            new Rule("402", new Format(17, 17, Kind.CHECKED)),
            new Rule("41[0-7]", new Format(13, 13, Kind.CHECKED)),
            new Rule("420", new Format(1, 20, Kind.TEXT)),
            new Rule("42[2456]", new Format(3, 3, Kind.DIGITS)),
            new Rule("8004", new Format(1, 30, Kind.TEXT)),
            new Rule("8005", new Format(6, 6, Kind.DIGITS)),
            new Rule("801[78]", new Format(18, 18, Kind.CHECKED)),
            new Rule("8020", new Format(1, 25, Kind.TEXT)),
            new Rule("90", new Format(1, 30, Kind.TEXT)),
            new Rule("9[1-9]", new Format(1, 90, Kind.TEXT)));

    /** The identifier of this code, or a refusal if it is not known. */
    static ApplicationIdentifier of(String code) throws RefusalException {
        for (Rule rule : RULES) {
            if (rule.codes().matcher(code).matches()) {
                return new ApplicationIdentifier(code, rule.format());
            }
        }
        throw new RefusalException(
                "unknown GS1 application identifier (" + code + ")",
                "use one in common use, such as (01), (10), (17), (21), or a plain datamatrix");
    }

    /** Whether a scanner knows its length, so that no separator follows it. */
    boolean hasPredefinedLength() {
        return PREDEFINED.contains(code.substring(0, 2));
    }

    void check(String value) throws RefusalException {
        format.check("GS1 element (" + code + ")", value);
    }

    /** What characters a value is made of. */
    private enum Kind {
        DIGITS("[0-9]", "digits"),
        CHECKED("[0-9]", "digits"),
        DATE("[0-9]", "digits"),
        TEXT(CHARACTERS, "characters of GS1's set");

        private final String characters;
        private final String words;

        Kind(String characters, String words) {
            this.characters = characters;
            this.words = words;
        }
    }

    private record Rule(Pattern codes, Format format) {
        Rule(String codes, Format format) {
            this(Pattern.compile(codes), format);
        }
    }

    /** How long a value is, and of what. */
    private record Format(int least, int most, Kind kind) {
        void check(String what, String value) throws RefusalException {
            if (!value.matches(kind.characters + "{" + least + "," + most + "}")) {
                String length = least == most ? String.valueOf(most) : least + " to " + most;
                throw new RefusalException(
                        what + " '" + value + "' is not " + length + " " + kind.words, "correct the value");
            }
            if (kind == Kind.CHECKED) {
                CheckDigit.complete(value, most, what);
            }
            if (kind == Kind.DATE) {
                checkDate(what, value);
            }
        }

        /** Year, month, day in two digits each; day 00 means the month's last. */
        private static void checkDate(String what, String value) throws RefusalException {
            int month = Integer.parseInt(value.substring(2, 4));
            int day = Integer.parseInt(value.substring(4));
            // The century does not matter, since 2000 is a leap year like every fourth one near it.
            int year = 2000 + Integer.parseInt(value.substring(0, 2));
            if (month < 1
                    || month > 12
                    || day > java.time.YearMonth.of(year, month).lengthOfMonth()) {
                throw new RefusalException(
                        what + " '" + value + "' is not a date YYMMDD", "give year, month and day in two digits each");
            }
        }
    }
}
