package dev.quoin.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is an item's own: serial numbers, and sizes shared on a plate. */
class OwnValuesTest {
    private static final String TAG = """
            <svg xmlns="http://www.w3.org/2000/svg" width="10mm" height="10mm" viewBox="0 0 10 10">
              <rect id="box" class="guide" x="1" y="2" width="8" height="6"/>
              <text data-fit="box" data-min-height="0.3" data-max-height="6" data-same-size="%s" font-size="6">%s</text>
            </svg>
            """;

    @TempDir
    private Path folder;

    private SmallJob job;

    @BeforeEach
    void givenAnOrderOfSevenPieces() throws IOException {
        job = new SmallJob(folder, "Name,Pieces\nAnna,4\nBo,2\nBartholomew,1\n").with(JobKey.QUANTITY_COLUMN, "Pieces");
    }

    @Test
    void copiesOfARowCarryTheirOwnSerialNumbers() throws IOException {
        job.file("template.svg", TAG.formatted("order", "${serial}")).with(JobKey.SERIAL_START, "1");
        assertTrue(job.prepare().isPresent(), job.problems());
        assertNotEquals(outline(1, 1), outline(1, 2));
        assertNotEquals(outline(1, 3), outline(1, 4));
    }

    @Test
    void aRowThatIsLeftOutKeepsItsSerialNumbers() throws IOException {
        String tag = TAG.formatted("order", "${name}${serial}").replace(" data-same-size=\"order\"", "");
        job.file("template.svg", tag).with(JobKey.SERIAL_START, "100").prepare();
        String sixth = relative(outline(1, 6));
        SmallJob without = new SmallJob(folder, "Name,Pieces\n,4\nBo,2\n")
                .file("template.svg", tag)
                .with(JobKey.QUANTITY_COLUMN, "Pieces")
                .with(JobKey.SKIP_BAD_ROWS, "true")
                .with(JobKey.SERIAL_START, "100");
        assertTrue(without.prepare().isPresent(), without.problems());
        assertEquals(sixth, relative(outline(1, 6)));
    }

    @Test
    void copiesOfARowWithoutOwnValuesAreAlike() throws IOException {
        job.file("template.svg", TAG.formatted("order", "${name}"));
        assertTrue(job.prepare().isPresent(), job.problems());
        assertEquals(relative(outline(1, 1)), relative(outline(1, 2)));
    }

    /** Six pieces fill the first plate; the long name stands alone on the second. */
    @Test
    void sizesOfAPlateAreItsOwnAndThoseOfTheOrderAreOne() throws IOException {
        job.file("template.svg", TAG.formatted("plate", "${name}"));
        assertTrue(job.prepare().isPresent(), job.problems());
        String byPlate = relative(outline(1, 5));
        job.file("template.svg", TAG.formatted("order", "${name}"));
        job.prepare();
        assertNotEquals(byPlate, relative(outline(1, 5)));
    }

    @Test
    void aColumnCalledSerialAndSerialNumbersContradictEachOther() throws IOException {
        SmallJob both = new SmallJob(folder, "Serial\nA1\n").with(JobKey.SERIAL_START, "1");
        both.prepare();
        assertEquals(
                "order.csv:1:1: the order has a column 'Serial', and the job's settings number items in "
                        + "series; rename the column, or leave the --serial options out",
                both.problems());
    }

    @Test
    void serialNumbersMustHaveRoomInTheirWidth() throws IOException {
        job.with(JobKey.SERIAL_START, "998").with(JobKey.SERIAL_WIDTH, "3").prepare();
        assertEquals("--serial-width: 1004 has more than 3 digits; give a larger --serial-width", job.problems());
    }

    @Test
    void serialNumbersNeverFallBelowNought() throws IOException {
        job.with(JobKey.SERIAL_START, "3").with(JobKey.SERIAL_STEP, "-1").prepare();
        assertEquals("--serial-start: 7 pieces end with -3; start higher or use smaller steps", job.problems());
    }

    @Test
    void aFormOfDatesMustNameAColumn() throws IOException {
        job.with(JobKey.DATE_FORMAT, "d/M/yyyy; Nam=d/M/yyyy").prepare();
        assertEquals(
                "--date-format: 'd/M/yyyy' names no column; write COLUMN=FORM, such as Since=d/M/yyyy\n"
                        + "--date-format: the order has no column 'Nam'; did you mean 'Name'?",
                job.problems());
    }

    /** The path data of an item's only mark. */
    private String outline(int plate, int item) throws IOException {
        String svg = Files.readString(folder.resolve("run/plate-00" + plate + ".svg"));
        Matcher mark = Pattern.compile("item-0*" + item + "\".*? d=\"([^\"]*)\"", Pattern.DOTALL)
                .matcher(svg);
        mark.find();
        return mark.group(1);
    }

    /** Coordinates from the first, so that the same mark in another slot reads alike, to 0.01 mm. */
    private static String relative(String outline) {
        Matcher numbers = Pattern.compile("-?\\d+(\\.\\d+)?").matcher(outline);
        double[] first = new double[2];
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 12 && numbers.find(); i++) {
            double value = Double.parseDouble(numbers.group());
            if (i < 2) {
                first[i] = value;
            }
            text.append(Math.round((value - first[i % 2]) * 100)).append(' ');
        }
        return text.toString();
    }
}
