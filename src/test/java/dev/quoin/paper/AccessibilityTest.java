package dev.quoin.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.browser.Chromium;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.FillRule;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The papers on a screen, as axe-core 4.6.3 (Deque Systems; WCAG 2.0 to 2.2, A and AA) finds them in Chromium. */
@Tag("browser")
class AccessibilityTest {
    private static final String AXE = "/META-INF/resources/webjars/axe-core/4.6.3/axe.min.js";

    @TempDir
    private Path folder;

    @Test
    void theRunSheetHasNoSeriousFinding() throws Exception {
        List<PlateView> plates =
                List.of(SampleSheet.tray(1, 7001, List.of("Ada")), SampleSheet.tray(2, 7101, List.of("Bo")));
        List<LeftOut> leftOut = List.of(new LeftOut(14, "3-5", "too long"));
        assertNothingSerious(
                SampleSheet.html(SampleSheet.head("harbour", plates, SampleSheet.problems(), leftOut), plates));
    }

    @Test
    void theReprintSheetHasNoSeriousFinding() throws Exception {
        StringWriter out = new StringWriter();
        new ReprintSheet().write(out, SampleSheet.reprint());
        assertNothingSerious(out.toString());
    }

    @Test
    void theProofHasNoSeriousFinding() throws Exception {
        ProofHead head = new ProofHead("harbour", Optional.of("2026-03-05"), "order.csv", 3, List.of(7));
        ProofInk ink =
                new ProofInk(ProofInk.Kind.AREA, dev.quoin.geometry.Path.of(Box.centred(20, 4)), FillRule.NON_ZERO);
        ProofWriter proof = new ProofWriter();
        StringWriter out = new StringWriter();
        proof.head(out, head);
        proof.item(out, piece(1, "#1b1b1b", ink));
        proof.item(out, piece(2, "#d9d9d9", ink));
        proof.foot(out, head);
        assertNothingSerious(out.toString());
    }

    @Test
    void aPageWithoutNamesForItsFieldsIsFound() throws Exception {
        String page = "<!DOCTYPE html><html><head><title>x</title></head><body><main><input></main></body></html>";
        assertTrue(findings(page).contains("critical label"), findings(page));
    }

    private static ProofItem piece(int number, String colour, ProofInk ink) {
        return new ProofItem(
                number,
                1,
                number + 1,
                List.of(new ProofItem.Typed("Name", "Ada"), new ProofItem.Typed("Line 2", "")),
                "tag",
                dev.quoin.geometry.Path.of(Box.centred(50, 25)),
                colour,
                List.of(ink),
                List.of("Broken into 2 lines: Ada / Marsh"),
                false);
    }

    private void assertNothingSerious(String html) throws Exception {
        String found = findings(html);
        List<String> serious = found.lines()
                .filter(line -> line.startsWith("serious") || line.startsWith("critical"))
                .toList();
        assertEquals(List.of(), serious);
        assertTrue(found.contains("passes "), found);
    }

    /** A line for each rule that is broken: how grave, which, where. The last says how many rules were kept. */
    private String findings(String html) throws Exception {
        String script = "axe.run().then(function(r){var out=r.violations.map(v=>v.impact+' '+v.id+' '"
                + "+v.nodes.map(n=>n.target.join(' ')).slice(0,3).join(', '));out.push('passes '+r.passes.length);"
                + "var pre=document.createElement('pre');pre.id='found';pre.textContent=out.join('\\n');"
                + "document.body.append(pre);});";
        String dom = new Chromium(folder)
                .dom(html.replace("</body>", "<script>" + axe() + "</script><script>" + script + "</script></body>"));
        Matcher found = Pattern.compile("<pre id=\"found\">([^<]*)</pre>").matcher(dom);
        assertTrue(found.find(), "axe ended");
        return found.group(1);
    }

    private static String axe() throws IOException {
        try (InputStream in = AccessibilityTest.class.getResourceAsStream(AXE)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
