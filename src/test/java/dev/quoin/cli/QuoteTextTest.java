package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.quoin.job.Quotation;
import dev.quoin.job.QuoteLine;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Given a quotation, then this is said. */
class QuoteTextTest {
    private static final Quotation QUOTATION = new Quotation(
            "fair",
            12,
            Map.of("tag", 12),
            List.of(
                    new QuoteLine(
                            "tray", "f160", 110, 1, 6, 0, 0, 0, 0.0434, Map.of("steel", 3.285), Optional.of("no slot")),
                    new QuoteLine("tray", "f254", 175, 6, 6, 2, 90, 30, 0.07, Map.of("steel", 1.0), Optional.empty())),
            Map.of("tiny.csv", "too \"small\""));

    /** 4 h 28 min 39 s are 4 h 29 min on paper too. */
    @Test
    void hoursAreRoundedToTheMinuteAsOnPaper() {
        assertEquals("4 h 29 min", SummaryText.duration(4 * 3600 + 28 * 60 + 39));
        assertEquals("1 h 0 min", SummaryText.duration(3599.6));
        assertEquals("59 min 59 s", SummaryText.duration(3599.4));
        assertEquals("0 s", SummaryText.duration(0.2));
    }

    @Test
    void aPersonReadsATableAndWhichToTake() {
        assertEquals("""
                fair: 12 items; 12 x tag

                jig   lens  field   slots   plates  laser       total      spot   fluence
                tray  f160  110 mm  1 of 6  -       -           -          43 um  329 %
                tray  f254  175 mm  6 of 6  2       1 min 30 s  2 min 0 s  70 um  100 %

                not f160 on tray: no slot
                not on tiny.csv: too "small"
                take f254 on tray: the smallest field, so the finest spot, that reaches every slot
                fluence is against that through the recipe's own lens, at the same power; it falls with the spot's area
                """.strip(), String.join("\n", QuoteText.lines(QUOTATION)));
    }

    @Test
    void aScriptReadsJson() throws IOException {
        JsonNode json = new ObjectMapper().readTree(QuoteText.json(QUOTATION, List.of()));
        assertEquals("f254", json.at("/take/lens").asText());
        assertEquals("no slot", json.at("/lines/0/refusal").asText());
        assertEquals(120, json.at("/lines/1/totalSeconds").asDouble());
        assertEquals("too \"small\"", json.at("/unfit/tiny.csv").asText());
    }
}
