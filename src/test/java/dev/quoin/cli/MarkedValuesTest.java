package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.drawing.FontRequest;
import dev.quoin.drawing.TextAnchor;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Polyline;
import dev.quoin.lettering.FontLibrary;
import dev.quoin.lettering.FontSet;
import dev.quoin.lettering.TypesetText;
import dev.quoin.lettering.Typesetter;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.store.PlateMark;
import dev.quoin.store.PlateReader;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Given values that look like markup or expressions, then their letters are marked, and the drawing stays what it is. */
class MarkedValuesTest {
    /** Half a unit of the plate's last decimal in x and in y, and a little for the flattening. */
    private static final double TOLERANCE = 0.001;

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Tom & \"Jo\" <3",
                "</text><rect/>",
                "${x}",
                "O'Brien",
                "&amp;",
                "&#65;",
                "<![CDATA[A]]>",
                "<#assign a=1>",
                "%{x} #{x} [=x]",
                "a\\u0041 \\n",
            })
    void theMarksAreTheLettersThemselves(String value) throws Exception {
        Path run = prepared(value);
        List<PlateMark> marks;
        try (InputStream plate = Files.newInputStream(run.resolve("plate-001.svg"))) {
            marks = PlateReader.read(plate, Set.of(1)).get(1);
        }
        assertEquals(1, marks.size());
        assertSame(letters(value), marks.get(0).path().flatten(0.01));
    }

    @Test
    void aLineBreakIsToldOfWhereATextHasNoLineForIt() {
        JobFolder job = new JobFolder(folder).order("Name,Town", "\"Ada\nKing\",\"Port\nSaid\"");
        String town = "<text x=\"5\" y=\"22\" font-size=\"3\" font-family=\"DejaVu Sans\">${town}</text>\n";
        String told = "order.csv:2:1: warning: Name: a line break in 'Ada King', which the template has no line for:"
                + " it becomes a space; take it out, or give the text more lines with data-lines";
        List<String> one = job.template(JobFolder.text("${name}") + town)
                .quoin("check", "job")
                .err();
        assertTrue(one.contains(told), one.toString());
        assertTrue(
                one.contains(told.replace("2:1", "2:2").replace("Name", "Town").replace("Ada King", "Port Said")));
        String spaced = town.replace("${town}", "${town?replace('\\n', ' ')}");
        List<String> two = job.template(JobFolder.text("${name}").replace("<text ", "<text data-lines=\"2\" ") + spaced)
                .quoin("check", "job")
                .err();
        assertFalse(two.toString().contains("a line break"), two.toString());
    }

    @Test
    void theSheetShowsTheValueAsItIs() throws Exception {
        Path run = prepared("Tom & \"Jo\" <3</td><script>alert(1)</script>");
        String sheet = Files.readString(run.resolve("run-sheet.html"));
        assertTrue(sheet.contains("Tom &amp; &quot;Jo&quot; &lt;3&lt;/td&gt;"), "the value is not on the sheet");
        assertFalse(sheet.contains("&amp;amp;"));
        assertFalse(sheet.contains("alert(1)</script>"));
    }

    @Test
    void aValueInAnAttributeIsNoMarkup() {
        JobFolder job = new JobFolder(folder)
                .order("Width", "\"5\"\"/><rect width=\"\"40\"\" height=\"\"20\"")
                .template("<rect x='5' y='5' width='${width}' height='5'/>");
        QuoinRun run = job.prepare();
        assertEquals(1, run.status());
        assertEquals(
                "order.csv:2:1: Width: <rect> has width=\"5\"/><rect width=\"40\" height=\"20\", which is not understood"
                        + " (tag.svg:2:1); correct that value",
                run.err().get(0));
    }

    @Test
    void anExpressionReachesNoClassAndNoFile() {
        for (String expression : List.of(
                "\"freemarker.template.utility.Execute\"?new()(\"id\")",
                "name?api.class",
                "name.class.forName(\"java.lang.Runtime\")")) {
            QuoinRun run = new JobFolder(folder)
                    .template("<text x='5' y='15' font-size='4'>${" + expression.replace("\"", "&quot;") + "}</text>")
                    .prepare();
            assertEquals(1, run.status(), () -> expression + ": " + run);
        }
    }

    private Path prepared(String value) {
        JobFolder job = new JobFolder(folder)
                .order("Name", '"' + value.replace("\"", "\"\"") + '"')
                .template("<text x='5' y='15' font-family='DejaVu Sans' font-size='4'>${name}</text>")
                .jig("A1,0,0,0,200,25,yes")
                .set("jig-centre", "0,0");
        QuoinRun run = job.prepare();
        assertEquals(0, run.status(), run.err().toString());
        return job.run();
    }

    /** The letters on the page of a field of 200 mm: the tag's centre, 25 and 12.5 mm into the template, at 100, 100. */
    private static List<Polyline> letters(String value) throws Exception {
        Problems problems = new Problems();
        FontSet fonts = FontLibrary.open(List.of(), false, problems)
                .select(new FontRequest(List.of("DejaVu Sans"), 400, false), Place.of("test"), problems)
                .orElseThrow();
        TypesetText set = (TypesetText) new Typesetter().set(value, fonts);
        return set.at(5 - 25, 12.5 - 15, TextAnchor.START, 4)
                .transform(new Affine(1, 0, 0, -1, 100, 100))
                .flatten(0.01);
    }

    private static void assertSame(List<Polyline> expected, List<Polyline> actual) {
        assertEquals(expected.size(), actual.size(), "contours");
        for (int i = 0; i < expected.size(); i++) {
            Polyline one = expected.get(i);
            Polyline other = actual.get(i);
            assertEquals(one.length(), other.length(), 0.01, "length of contour " + i);
            assertEquals(one.signedArea(), other.signedArea(), 0.01, "area of contour " + i);
            assertEquals(one.x(0), other.x(0), TOLERANCE);
            assertEquals(one.y(0), other.y(0), TOLERANCE);
        }
    }
}
