package dev.quoin.shop;

/**
 * The laser and its scanner; units in the names (mm, s, W, kHz, ns, nm, mm/s).
 *
 * @param laserClass the class by IEC 60825-1 as the maker states it, such as {@code 4}
 * @param jumpSpeed mm/s
 * @param jumpSettle after each jump, s
 * @param laserOn before each stroke, s
 * @param laserOff after each stroke, s
 * @param markSettle after each stroke, s
 * @param corner for a turn by 180 degrees inside a stroke, s
 * @param load for an item, both ways, s
 * @param plate for a plate, s
 * @param setup for the first plate, and after each change of recipe, lens, blank or jig, s
 * @param firstPiece for the first piece after each set-up, s
 * @param fieldTurn how the field is turned against the machine's body, degrees anticlockwise
 * @param fieldMirror whether the field is mirrored against the machine's body
 * @param shift for each further part of a plate: a jig shifted, a round piece turned, s
 */
public record Machine(
        double powerW,
        double wavelengthNm,
        double beamDiameterMm,
        double m2,
        String laserClass,
        double maxSpeed,
        double minFrequencyKhz,
        double maxFrequencyKhz,
        double minPulseNs,
        double maxPulseNs,
        double jumpSpeed,
        double jumpSettle,
        double laserOn,
        double laserOff,
        double markSettle,
        double corner,
        double load,
        double plate,
        double setup,
        double firstPiece,
        double fieldTurn,
        FieldMirror fieldMirror,
        double shift) {}
