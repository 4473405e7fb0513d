package dev.quoin.shop;

import dev.quoin.geometry.Box;

/**
 * An f-theta lens.
 *
 * @param name what the shop calls it
 * @param field the side of the square that the scanner reaches through it, mm
 * @param focalLength mm
 * @param focusDistance from the lens's reference face down to the focus, mm
 * @param margin the strip along each side of the field that is not used, mm
 */
public record Lens(String name, double field, double focalLength, double focusDistance, double margin, String note) {
    /** What may be marked through it: the field without its margins, around the origin. */
    public Box reach() {
        return Box.centred(field - 2 * margin, field - 2 * margin);
    }
}
