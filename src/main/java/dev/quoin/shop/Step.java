package dev.quoin.shop;

/**
 * One step of a recipe.
 *
 * @param number its place in the recipe, from 1
 * @param process which process it treats
 * @param powerPercent of the machine's power, (0, 100]
 * @param speed mm/s
 * @param frequencyKhz pulses, kHz
 * @param pulseNs length of a pulse, ns
 * @param spacing between the lines of a fill, mm; 0 for a follow step
 * @param angle of the lines of a fill in the field, degrees anticlockwise from the x axis
 * @param turn added to the angle with each pass, degrees
 * @param passes at least 1
 * @param inset how far a fill keeps inside its area, mm
 */
public record Step(
        int number,
        String process,
        Method method,
        double powerPercent,
        double speed,
        double frequencyKhz,
        double pulseNs,
        double spacing,
        double angle,
        double turn,
        Pattern pattern,
        int passes,
        double inset,
        EdgePass edge,
        String note) {
    /** The process that cuts parts out: after it nothing holds them in their place. */
    public static final String CUT = "cut";

    /** Whether it cuts parts out, as its process's name says. */
    public boolean cuts() {
        return method == Method.FOLLOW && process.equals(CUT);
    }

    /** How files and papers name it: {@code step-1-engrave}. */
    public String id() {
        return "step-" + number + "-" + process;
    }
}
