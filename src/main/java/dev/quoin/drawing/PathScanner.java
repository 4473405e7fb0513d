package dev.quoin.drawing;

/** Takes path data apart into commands, numbers and flags. */
final class PathScanner {
    private static final String COMMANDS = "MmZzLlHhVvCcSsQqTtAa";
    /** So many digits fit a double exactly, and so does the power of ten that places their point. */
    private static final int EXACT_DIGITS = 15;

    private static final double[] POWERS = new double[EXACT_DIGITS + 1];

    static {
        double power = 1;
        for (int i = 0; i <= EXACT_DIGITS; i++) {
            POWERS[i] = power;
            power *= 10;
        }
    }

    private final String data;
    private int at;

    PathScanner(String data) {
        this.data = data;
    }

    /** The next command; {@code repeated} where a number follows instead, unless that is 0; 0 at the end. */
    char command(int repeated) {
        skipSpace();
        int afterSpace = at;
        boolean comma = repeated != 0 && at > 0 && skipComma();
        if (at == data.length() && !comma) {
            return 0;
        }
        if (repeated != 0 && at > 0 && startsNumber()) {
            return (char) repeated;
        }
        at = afterSpace;
        if (at == data.length() || COMMANDS.indexOf(data.charAt(at)) < 0) {
            throw unexpected();
        }
        return data.charAt(at++);
    }

    double number() {
        skipSpace();
        skipComma();
        int start = at;
        boolean negative = sign();
        int digitsFrom = at;
        long whole = digits(0);
        int count = at - digitsFrom;
        int decimals = 0;
        if (peek() == '.') {
            int point = at++;
            whole = digits(whole);
            decimals = at - point - 1;
        }
        if (count + decimals == 0) {
            at = start;
            throw unexpected();
        }
        if (exponent() || count + decimals > EXACT_DIGITS) {
            return finite(Double.parseDouble(data.substring(start, at)), start);
        }
        double value = whole / POWERS[decimals];
        return negative ? -value : value;
    }

    /** A flag of an arc: one digit, 0 or 1, with or without white space after it. */
    boolean flag() {
        skipSpace();
        skipComma();
        char c = peek();
        if (c != '0' && c != '1') {
            throw unexpected();
        }
        at++;
        return c == '1';
    }

    IllegalArgumentException unexpected() {
        return new IllegalArgumentException("not path data, from character " + (at + 1));
    }

    private boolean sign() {
        char c = peek();
        if (c == '-' || c == '+') {
            at++;
        }
        return c == '-';
    }

    private long digits(long before) {
        long value = before;
        for (char c = peek(); c >= '0' && c <= '9'; c = peek()) {
            value = value * 10 + (c - '0');
            at++;
        }
        return value;
    }

    private boolean exponent() {
        int start = at;
        if (peek() != 'e' && peek() != 'E') {
            return false;
        }
        at++;
        sign();
        int from = at;
        digits(0);
        if (at == from) {
            at = start;
        }
        return at > start;
    }

    private double finite(double value, int start) {
        if (!Double.isFinite(value)) {
            at = start;
            throw unexpected();
        }
        return value;
    }

    private boolean startsNumber() {
        char c = peek();
        return (c >= '0' && c <= '9') || c == '-' || c == '+' || c == '.';
    }

    private char peek() {
        return at < data.length() ? data.charAt(at) : 0;
    }

    private void skipSpace() {
        for (char c = peek(); c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\f'; c = peek()) {
            at++;
        }
    }

    private boolean skipComma() {
        boolean found = peek() == ',';
        if (found) {
            at++;
            skipSpace();
        }
        return found;
    }
}
