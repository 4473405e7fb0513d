package dev.quoin.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Spots and depths of focus against published values. */
class BeamTest {
    private static final double MM_PER_UM = 1e-3;

    private static double value(Map<String, String> inputs, String name, double otherwise) {
        if (!inputs.containsKey(name)) {
            return otherwise;
        }
        String[] parts = inputs.get(name).split(" ");
        double number = Double.parseDouble(parts[0]);
        return parts.length > 1 && parts[1].equals("um") ? number * MM_PER_UM : number;
    }

    private static Map<String, String> inputs(String text) {
        Map<String, String> inputs = new TreeMap<>();
        for (String pair : text.split("; ")) {
            String[] sides = pair.split("=");
            inputs.put(sides[0], sides.length > 1 ? sides[1] : "");
        }
        return inputs;
    }

    private static double expected(String text, String unit) {
        Matcher number = Pattern.compile("([0-9.e-]+) " + unit + "( .*)?").matcher(text);
        assertTrue(number.matches(), text);
        return Double.parseDouble(number.group(1));
    }

    @Test
    void publishedValuesAreMet() throws IOException {
        // quoin.cases/optics/gaussian.tsv names the source of each line. The line on the beam parameter product is
        // passed
        // over: it is the definition (half angle times half width), and nothing here gives it.
        Path file = Path.of(System.getProperty("quoin.cases"), "optics", "gaussian.tsv");
        Assumptions.assumeTrue(Files.exists(file), () -> file + " is absent");
        int checked = 0;
        List<String> lines = Files.readAllLines(file);
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split("\t");
            checked += check(cells[0], inputs(cells[1]), cells[2], Double.parseDouble(cells[3])) ? 1 : 0;
        }
        assertEquals(9, checked);
    }

    private static boolean check(String what, Map<String, String> in, String expected, double relative) {
        Beam beam = new Beam(value(in, "lambda", 0), value(in, "M2", 1), value(in, "D", 0));
        double width = 2 * value(in, "w0", 0);
        double wanted;
        double actual;
        switch (what) {
            case "zR" -> {
                wanted = 1e3 * expected(expected, "m(?:m)?");
                wanted = expected.contains(" mm") ? wanted / 1e3 : wanted;
                actual = beam.rayleighLength(width);
            }
            case "divergence_full" -> {
                wanted = expected(expected, "rad");
                actual = width / beam.rayleighLength(width);
            }
            case "spot_d" -> {
                wanted = MM_PER_UM * expected(expected, "um");
                actual = beam.spot(value(in, "f", 0));
            }
            default -> {
                return false;
            }
        }
        assertEquals(wanted, actual, relative * wanted, what + " " + in);
        return true;
    }

    @ParameterizedTest
    @CsvSource({
        // M2, wavelength um, f mm, D mm, spot um. C. B. Roundy 2000, equation 6b, as tested in laserbeamsize.
        "1,   1,     10,  2,  6.3661977, 1e-7",
        "1.3, 0.532, 120, 10, 10.567,    1e-4",
    })
    void spotInTheFocus(double m2, double wavelength, double f, double d, double spot, double relative) {
        Beam beam = new Beam(wavelength * MM_PER_UM, m2, d);
        assertEquals(spot * MM_PER_UM, beam.spot(f), relative * spot * MM_PER_UM);
    }

    @Test
    void spotOfAnUntruncatedBeamByAScannerMakersFormula() {
        // SCANLAB glossary, 'focal diameter': d = M2 k lambda f / D with k 1.27 for a beam that no aperture cuts;
        // printed to
        // three figures.
        double expected = 1.3 * 1.27 * 1064e-6 * 160 / 10;
        assertEquals(expected, new Beam(1064e-6, 1.3, 10).spot(160), 0.005 * expected);
    }

    @Test
    void depthOfFocusOfACalculatorPage() {
        // cdfoley.com/tools: w0 25 um, 1.064 um, M2 1.1: Rayleigh length 1.7 mm as printed, 1.67763 mm computed.
        Beam beam = new Beam(1.064 * MM_PER_UM, 1.1, 10);
        assertEquals(1.67763, beam.rayleighLength(0.05), 1e-5);
        assertEquals(2 * 1.67763, beam.depthOfFocus(0.05), 2e-5);
    }
}
