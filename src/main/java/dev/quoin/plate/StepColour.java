package dev.quoin.plate;

/**
 * The colours that tell steps apart in plate files and on papers: M. Okabe and K. Ito, "Color Universal Design", 2008, a
 * palette that colour-blind people can read.
 */
public enum StepColour {
    BLACK("black", "#000000"),
    ORANGE("orange", "#E69F00"),
    SKY_BLUE("sky blue", "#56B4E9"),
    GREEN("bluish green", "#009E73"),
    YELLOW("yellow", "#F0E442"),
    BLUE("blue", "#0072B2"),
    VERMILION("vermilion", "#D55E00"),
    PURPLE("reddish purple", "#CC79A7");

    private final String title;
    private final String hex;

    StepColour(String title, String hex) {
        this.title = title;
        this.hex = hex;
    }

    /** The colour of the step with this number, from 1; after the last colour they start again. */
    public static StepColour of(int stepNumber) {
        return values()[(stepNumber - 1) % values().length];
    }

    /** Its name on papers. */
    public String title() {
        return title;
    }

    /** Its value in files: {@code #RRGGBB}. */
    public String hex() {
        return hex;
    }
}
