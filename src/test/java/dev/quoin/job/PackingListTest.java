package dev.quoin.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Given an order of a few customers on a tray of six, then these parcels at the end of the run sheet. */
class PackingListTest {
    private static final String ORDER = """
            Customer,Town,Number
            Cole & Daughters,Ost,1
            Aska,West,4
            Cole & Daughters,West,2
            ,Ost,1
            """;

    private static final Pattern PARCEL = Pattern.compile("<h3><span dir=\"auto\">(.*?)</span>: (\\d+) pieces?</h3>");
    private static final Pattern PIECE = Pattern.compile(
            "data-check=\"packed-(\\d+)\".*<td class=\"number\">(\\d+)</td><td dir=\"auto\">(\\w+)</td>");

    @TempDir
    Path folder;

    private SmallJob job;

    @BeforeEach
    void given() throws IOException {
        job = new SmallJob(folder, ORDER).with(JobKey.QUANTITY_COLUMN, "Number");
    }

    @Test
    void withoutItThereIsNone() throws IOException {
        job.prepare();
        assertFalse(Files.readString(job.run().resolve("run-sheet.html")).contains("Packing list"));
    }

    @Test
    void piecesAreListedUnderTheirCustomerWithPlateAndSlot() throws IOException {
        job.with(JobKey.PACKING_BY, "Customer").prepare();
        assertEquals(
                List.of(
                        "Cole &amp; Daughters: 3 = 1 on 1 A1, 6 on 1 B3, 7 on 2 A1",
                        "Aska: 4 = 2 on 1 A2, 3 on 1 A3, 4 on 1 B1, 5 on 1 B2",
                        "Customer: none given: 1 = 8 on 2 A2"),
                parcels());
    }

    @Test
    void whatIsKeptTogetherOnPlatesIsPackedTogether() throws IOException {
        job.with(JobKey.KEEP_TOGETHER, "Customer").prepare();
        assertTrue(parcels().get(1).startsWith("Aska: 4 = "), parcels().toString());
    }

    @Test
    void anotherColumnMayBeNamedForPacking() throws IOException {
        job.with(JobKey.KEEP_TOGETHER, "Customer")
                .with(JobKey.PACKING_BY, "Town")
                .prepare();
        assertTrue(parcels().get(0).startsWith("Ost: 2 = "), parcels().toString());
        assertEquals(2, parcels().size());
    }

    @Test
    void aColumnThatIsNotThereIsAnError() throws IOException {
        assertTrue(job.with(JobKey.PACKING_BY, "Towne").prepare().isEmpty());
        assertEquals("--packing-by: the order has no column 'Towne'; did you mean 'Town'?", job.problems());
    }

    /** {@code NAME: COUNT = ITEM on PLATE SLOT, ...} */
    private List<String> parcels() throws IOException {
        String html = Files.readString(job.run().resolve("run-sheet.html"));
        String list = html.substring(html.indexOf("id=\"packing\""));
        List<String> parcels = new ArrayList<>();
        for (String block : list.split("(?=<h3>)")) {
            Matcher parcel = PARCEL.matcher(block);
            if (parcel.find()) {
                List<String> pieces = PIECE.matcher(block)
                        .results()
                        .map(piece -> piece.group(1) + " on " + piece.group(2) + " " + piece.group(3))
                        .toList();
                parcels.add(parcel.group(1) + ": " + parcel.group(2) + " = " + String.join(", ", pieces));
            }
        }
        return parcels;
    }
}
