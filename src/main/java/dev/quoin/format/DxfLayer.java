package dev.quoin.format;

import dev.quoin.plate.StepColour;
import dev.quoin.shop.Step;
import java.util.regex.Pattern;

/**
 * A layer of a DXF file.
 *
 * @param name as release 12 allows it: at most 31 letters, digits, {@code $}, {@code -} and {@code _}
 * @param colour the AutoCAD Color Index next to the step's colour in other files: 1 to 7 have names, 30 is orange (DXF
 *     Reference, group code 62)
 */
record DxfLayer(String name, int colour) {
    private static final int LONGEST = 31;
    private static final Pattern FORBIDDEN = Pattern.compile("[^A-Za-z0-9$_-]");

    static DxfLayer of(Step step) {
        String name = FORBIDDEN.matcher(step.id()).replaceAll("_");
        return new DxfLayer(name.substring(0, Math.min(LONGEST, name.length())), index(StepColour.of(step.number())));
    }

    private static int index(StepColour colour) {
        return switch (colour) {
            case VERMILION -> 1;
            case YELLOW -> 2;
            case GREEN -> 3;
            case SKY_BLUE -> 4;
            case BLUE -> 5;
            case PURPLE -> 6;
            case BLACK -> 7;
            case ORANGE -> 30;
        };
    }
}
