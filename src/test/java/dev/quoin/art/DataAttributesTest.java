package dev.quoin.art;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a template's {@code data-*} attributes are told about, and where a condition counts. */
class DataAttributesTest {
    private static final String PAGE =
            "<svg xmlns='http://www.w3.org/2000/svg' width='60mm' height='30mm' viewBox='0 0 60 30'>"
                    + "<path id='ring' class='guide' d='M5 20H55'/><rect id='box' class='guide' x='5' y='5' width='50'"
                    + " height='10'/>%s</svg>";

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            <text data-fitt="box">a</text>            | <text> has data-fitt, which is nearly data-fit; write data-fit if that is meant
            <text data-fit="box" data-maxheight="2">a</text> | <text> has data-maxheight, which is nearly data-max-height; write data-max-height if that is meant
            <text data-Fit="box">a</text>             | <text> has data-Fit, which is nearly data-fit; write data-fit if that is meant
            <text data-lines="2">a</text>             | <text> has data-lines, which does nothing without data-fit; name the shape to fit into with data-fit, or take it off
            <text data-max-height="2">a</text>        | <text> has data-max-height, which does nothing without data-fit; name the shape to fit into with data-fit, or take it off
            <text><tspan data-fit="box">a</tspan></text> | <tspan> has data-fit, which does nothing on a <tspan>; put it on the <text>
            <rect width="9" height="9" data-content="a"/> | <rect> has data-content, which does nothing without data-code; add data-code, or take it off
            <g data-code="qr"><path d="M0 0H9V9Z"/></g>   | <g> has data-code, which does nothing on a <g>; put it on a <rect>
            <text><tspan data-when="">a</tspan></text>    | <tspan> has data-when, which does nothing on a <tspan>; put it on the element that is drawn
            """)
    void whatDoesNothingIsAWarning(String body, String message) {
        assertEquals("tag.svg:1: warning: " + message, problems(body));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            data-lines="2"        | <text>: a text along a path has no data-lines; take it off
            data-same-size="plate" | <text>: a text along a path has no data-same-size; take it off
            data-align="top"      | <text>: a text along a path has no data-align; take it off
            data-fit="box"        | <text>: data-fit names 'box', and the text runs along 'ring'; name the path that it runs along
            """)
    void whatATextAlongAPathCannotDoIsAnError(String attribute, String message) {
        String fit = attribute.startsWith("data-fit") ? "" : " data-fit='ring'";
        String body = "<text " + attribute + fit + "><textPath href='#ring'>a</textPath></text>";
        assertEquals("tag.svg:1: " + message, problems(body));
    }

    @Test
    void namesThatEditorsWriteAreLeftAlone() {
        assertEquals("", problems("<g data-name='Layer 1' data-paper-data='x'><text x='5' y='9'>a</text></g>"));
    }

    @Test
    void aConditionOfAGroupCountsForAllInIt() {
        Merged merged = Merged.columns("Name", "Show");
        Template template = merged.compile(String.format(
                PAGE,
                "<circle cx='5' cy='5' r='2'/><g data-when='${show!}'><g><circle cx='9' cy='9' r='1'/><text x='9' y='9'"
                        + " data-when='${name!}'>${name}</text></g></g>"));
        assertEquals(3, marks(merged, template, "Ada", "yes"));
        assertEquals(2, marks(merged, template, "", "yes"));
        assertEquals(1, marks(merged, template, "Ada", "false"));
        assertEquals(1, marks(merged, template, "Ada", ""));
    }

    @Test
    void aConditionCountsThroughAUseAndForPartsDrawnAnew() {
        Merged merged = Merged.columns("Name", "Show");
        Template template = merged.compile(String.format(
                PAGE,
                "<circle cx='5' cy='5' r='2'/><defs><rect id='r' width='3' height='3'/></defs>"
                        + "<g data-when='${show!}'><use href='#r'/><circle cx='9' cy='9' r='${name}'/></g>"));
        assertEquals(3, marks(merged, template, "2", "yes"));
        assertEquals(1, marks(merged, template, "2", "false"));
    }

    private static int marks(Merged merged, Template template, String... cells) {
        return merged.drawn(template, cells).orElseThrow().marks().size();
    }

    private static String problems(String body) {
        Problems problems = new Problems();
        Merged.columns("Name").compile(String.format(PAGE, body), problems);
        assertTrue(problems.sorted().size() < 2, problems.sorted().toString());
        return problems.sorted().stream()
                .map(Object::toString)
                .map(told -> told.replaceFirst(":1:[0-9]+:", ":1:"))
                .findFirst()
                .orElse("");
    }
}
