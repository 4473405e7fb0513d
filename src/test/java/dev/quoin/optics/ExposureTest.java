package dev.quoin.optics;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Figures of a step on a lens. */
class ExposureTest {
    @Test
    void fluenceOfAMillijouleOnFiftyMicrometres() {
        // Mean 1 mJ / (pi (25 um)^2) = 50.93 J/cm2; the peak is twice that: R. Paschotta, RP Photonics Spotlight, 3
        // November
        // 2025 (peak fluence of a Gaussian beam).
        assertEquals(101.86, Exposure.peakFluenceOf(1e-3, 0.05), 0.005);
    }

    @Test
    void pulsesOfFiftyKilohertzAtTwoMetresASecond() {
        // 2000 mm/s / 50 kHz = 40 um; a spot of 60 um is covered again by a third (closed form).
        // A beam of 1000 nm, M2 1 and 10 mm has that spot at f = pi D d / (4 lambda) = 471.239 mm.
        Exposure exposure = Exposure.of(
                Given.machine(20, 1000, 10, 1), Given.lens("far", 471.238898), Given.follow(100, 2000, 50, 100));
        assertAll(
                () -> assertEquals(0.06, exposure.spot(), 1e-9),
                () -> assertEquals(0.04, exposure.pulsePitch(), 1e-12),
                () -> assertEquals(0.333, exposure.pulseOverlap(), 0.0005));
    }

    @Test
    void aFillWorkedByHand() {
        // 20 W at 50 % = 10 W; 25 kHz: 0.4 mJ a pulse; over 100 ns: 4 kW; 500 mm/s: 0.02 J/mm and 0.02 mm from pulse to
        // pulse; lines 0.04 mm apart: 0.5 J/mm2.
        Exposure exposure = Exposure.of(
                Given.machine(20, 1000, 10, 1), Given.lens("l", 471.238898), Given.fill(50, 500, 25, 100, 0.04));
        assertAll(
                () -> assertEquals(10, exposure.power(), 1e-12),
                () -> assertEquals(0.4e-3, exposure.pulseEnergy(), 1e-15),
                () -> assertEquals(4000, exposure.peakPower(), 1e-9),
                () -> assertEquals(0.02, exposure.lineEnergy(), 1e-15),
                () -> assertEquals(0.02, exposure.pulsePitch(), 1e-15),
                () -> assertEquals(0.5, exposure.dose().orElseThrow(), 1e-12),
                () -> assertEquals(1 / 3.0, exposure.lineOverlap().orElseThrow(), 1e-8));
    }

    @Test
    void aFollowedLineHasNoDoseOfAnArea() {
        Exposure exposure =
                Exposure.of(Given.machine(20, 1064, 10, 1.3), Given.lens("l", 160), Given.follow(100, 500, 25, 100));
        assertTrue(exposure.dose().isEmpty());
        assertTrue(exposure.lineOverlap().isEmpty());
    }

    @Test
    void aLensOfTwiceTheFocalLengthNeedsFourTimesThePower() {
        // The spot is twice as wide, its area four times: a quarter of the fluence; the dose along the line halves.
        LensChange change = LensChange.of(
                Given.machine(20, 1064, 10, 1.3),
                Given.lens("short", 100),
                Given.lens("long", 200),
                Given.follow(20, 800, 25, 100));
        assertEquals(new LensChange(0.25, 80, 400), change);
    }
}
