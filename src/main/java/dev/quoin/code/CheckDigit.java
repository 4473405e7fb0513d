package dev.quoin.code;

/** The check digit of GS1 numbers: weights 3 and 1 from the right (GS1 General Specifications, 7.9.1). */
final class CheckDigit {
    private CheckDigit() {}

    /** The digit that follows these digits. */
    static char of(String digits) {
        int sum = 0;
        for (int i = 0; i < digits.length(); i++) {
            int weight = (digits.length() - i) % 2 == 1 ? 3 : 1;
            sum += weight * (digits.charAt(i) - '0');
        }
        return (char) ('0' + (10 - sum % 10) % 10);
    }

    /**
     * The number with its check digit: put on where it has {@code length - 1} digits, checked where it has all.
     *
     * @param what how a message names the kind of number
     */
    static String complete(String number, int length, String what) throws RefusalException {
        boolean digits = number.chars().allMatch(c -> c >= '0' && c <= '9');
        if (!digits || (number.length() != length && number.length() != length - 1)) {
            throw new RefusalException(
                    what + " '" + number + "' is not " + (length - 1) + " or " + length + " digits",
                    "give " + (length - 1) + " digits, or " + length + " with the check digit");
        }
        String body = number.substring(0, length - 1);
        char check = of(body);
        if (number.length() == length && number.charAt(length - 1) != check) {
            throw new RefusalException(
                    what + " '" + number + "' ends in " + number.charAt(length - 1) + ", its check digit is " + check,
                    "look the number up, a digit is wrong");
        }
        return body + check;
    }
}
