package dev.quoin.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.problem.Problems;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** A drawing may come from a stranger: it must neither hang the program nor make it look elsewhere. */
@Timeout(30)
class SvgSafetyTest {
    @Test
    void aDoctypeIsReadPast() {
        String doctype = "<!DOCTYPE svg PUBLIC \"-//W3C//DTD SVG 1.1//EN\""
                + " \"http://localhost:1/svg11.dtd\" [ <!ENTITY five \"5\"> ]>\n";
        String svg = doctype + Svg.page("<rect width='&five;' height='1'/>");
        Problems problems = new Problems();
        List<Drawn> drawn = SvgDrawing.read("t.svg", Svg.bytes(svg), problems)
                .orElseThrow(() -> new AssertionError(problems.sorted()))
                .draw(problems);
        assertEquals(List.of(), problems.sorted());
        assertEquals(5, ((DrawnShape) drawn.get(0)).local().bounds().width(), 1e-9);
    }

    @Test
    void anExternalEntityIsAnError() {
        String general = "<!DOCTYPE svg [ <!ENTITY e SYSTEM \"file:///etc/hostname\"> ]>\n";
        assertEquals(
                "t.svg:3:1: an entity stands in another file, file:///etc/hostname, which is not read; write it out",
                Svg.problems(general + Svg.page("<text>&e;</text>")));
        String parameter = "<!DOCTYPE svg [ <!ENTITY % e SYSTEM \"file:///etc/hostname\"> %e; ]>\n";
        assertTrue(Svg.problems(parameter + Svg.page("")).contains("an entity stands in another file"));
    }

    @Test
    void entitiesThatMultiplyAreStopped() {
        StringBuilder doctype = new StringBuilder("<!DOCTYPE svg [ <!ENTITY a0 \"ha\">");
        for (int i = 1; i < 12; i++) {
            String before = "&a" + (i - 1) + ";";
            doctype.append("<!ENTITY a")
                    .append(i)
                    .append(" \"")
                    .append(before.repeat(10))
                    .append("\">");
        }
        doctype.append("]>\n");
        String wanted = "the drawing's entities or attributes grow beyond what is read";
        assertTrue(Svg.problems(doctype + Svg.page("<text>&a11;</text>")).contains(wanted));
        assertTrue(Svg.problems(doctype + Svg.page("<rect id='&a11;'/>")).contains(wanted));
    }

    @Test
    void aLongEntityUsedOftenIsStopped() {
        String doctype = "<!DOCTYPE svg [ <!ENTITY a \"" + "ha".repeat(50_000) + "\"> ]>\n";
        assertTrue(Svg.problems(doctype + Svg.page("<text>" + "&a;".repeat(900) + "</text>"))
                .contains("the drawing's entities or attributes grow beyond what is read"));
    }

    @Test
    void deepNestingIsStopped() {
        assertTrue(Svg.problems(Svg.page("<g>".repeat(200_000))).contains("more than 100 deep"));
        assertTrue(Svg.problems(Svg.page("<a xmlns='urn:x'>".repeat(200))).contains("more than 100 deep"));
        assertEquals("", Svg.problems(Svg.page("<g>".repeat(90) + "</g>".repeat(90))));
    }

    @Test
    void tooManyElementsAreStopped() {
        assertTrue(Svg.problems(Svg.page("<g/>".repeat(100_001))).contains("more than 100000 elements"));
    }

    @Test
    void usesThatMultiplyAreStopped() {
        StringBuilder body = new StringBuilder("<g id='a0'><rect width='1' height='1'/></g>");
        for (int i = 1; i < 30; i++) {
            body.append("<g id='a").append(i).append("'>");
            body.append(("<use href='#a" + (i - 1) + "'/>").repeat(10)).append("</g>");
        }
        assertTrue(Svg.problems(Svg.page(body.toString())).contains("repeats more than 100000 elements"));
    }

    @Test
    void aUseOfItselfIsStopped() {
        assertTrue(Svg.problems(Svg.page("<g id='a'><use href='#b'/></g><g id='b'><use href='#a'/></g>"))
                .contains("leads back to itself"));
        StringBuilder chain = new StringBuilder("<rect id='a0' width='1' height='1'/>");
        for (int i = 1; i < 50_000; i++) {
            chain.append("<use id='a")
                    .append(i)
                    .append("' href='#a")
                    .append(i - 1)
                    .append("'/>");
        }
        StringBuilder backwards = new StringBuilder("<use href='#a49999'/>").append(chain);
        assertTrue(Svg.problems(Svg.page(backwards.toString())).contains("through too many others"));
    }

    @Test
    void aUseThatLeadsBackToItselfOnlyAfterMergingIsStopped() {
        Problems problems = new Problems();
        SvgDrawing drawing = Svg.drawing("<g id='a'><use href='#${b}'/></g>");
        assertEquals(List.of(List.of()), drawing.redraw(List.of("#a"), problems));
        assertTrue(problems.hasErrors());
    }

    @Test
    void aFileOfMoreThan20MbIsNotRead() {
        byte[] bomb = new byte[20_000_001];
        Arrays.fill(bomb, (byte) ' ');
        byte[] start = Svg.bytes(Svg.START);
        System.arraycopy(start, 0, bomb, 0, start.length);
        Problems problems = new Problems();
        assertTrue(assertTimeoutPreemptively(
                Duration.ofSeconds(5),
                () -> SvgDrawing.read("t.svg", bomb, problems).isEmpty()));
        assertTrue(problems.sorted().get(0).message().startsWith("the drawing has 20 MB"));
    }

    @Test
    void aStyleSheetOfAnotherFileIsAnError() {
        assertTrue(Svg.problems("<?xml-stylesheet href='http://localhost:1/a.css'?>\n" + Svg.page(""))
                .contains("takes its styles from another file"));
        assertTrue(Svg.problems(Svg.page("<style>@import url(http://localhost:1/a.css);</style><g/>"))
                .contains("t.svg:2:1: a <style> element takes rules from another file"));
    }

    @Test
    void brokenXmlIsPlacedByLineAndColumn() {
        assertTrue(Svg.problems(Svg.page("<g>\n<rect></g>")).startsWith("t.svg:3:9: not well-formed XML: "));
        assertTrue(Svg.problems("").startsWith("t.svg:1:1: not well-formed XML: "));
        assertTrue(Svg.problems("<html/>").contains("starts with <html>"));
    }

    @Test
    void bytesThatAreNoTextAreAnError() {
        byte[] bytes = Svg.page("<text>caf\u00e9</text>").getBytes(StandardCharsets.ISO_8859_1);
        Problems problems = new Problems();
        assertTrue(SvgDrawing.read("t.svg", bytes, problems).isEmpty());
        assertTrue(problems.sorted().get(0).message().startsWith("the file is not text in the encoding"));
    }

    @Test
    void encodingsAreReadByMarkAndByDeclaration() {
        String page = Svg.page("<text>caf\u00e9</text>");
        byte[] latin = ("<?xml version='1.0' encoding='ISO-8859-1'?>\n" + page).getBytes(StandardCharsets.ISO_8859_1);
        byte[] utf16 = ("\uFEFF" + page).getBytes(StandardCharsets.UTF_16LE);
        byte[] utf8 = ("\uFEFF" + page).getBytes(StandardCharsets.UTF_8);
        for (byte[] bytes : List.of(latin, utf16, utf8)) {
            Problems problems = new Problems();
            DrawnText text = (DrawnText) SvgDrawing.read("t.svg", bytes, problems)
                    .orElseThrow()
                    .draw(problems)
                    .get(0);
            assertEquals(
                    "caf\u00e9", text.lines().get(0).runs().get(0).content().source());
        }
    }
}
