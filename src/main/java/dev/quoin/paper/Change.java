package dev.quoin.paper;

/**
 * Something to change on the machine before a plate.
 *
 * @param before what the plate before it used
 * @param now what this plate needs
 */
public record Change(What what, String before, String now) {
    /** What changes; the order is that of the work. */
    public enum What {
        LENS("lens"),
        JIG("jig"),
        BLANK("blank"),
        RECIPE("recipe");

        private final String word;

        What(String word) {
            this.word = word;
        }

        /** As papers name it. */
        public String word() {
            return word;
        }
    }
}
