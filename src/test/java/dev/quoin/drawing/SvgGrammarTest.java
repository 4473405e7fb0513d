package dev.quoin.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.geometry.Box;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Lengths, numbers, transforms and viewBoxes of the grammar's cases, as a drawing understands them. */
class SvgGrammarTest {
    /** User units of one of each unit: CSS Values 3, section 6.2; em is the font size, ex half of it, % of 100. */
    private static final Map<String, Double> UNITS = Map.of(
            "None", 1.0, "Px", 1.0, "Em", 10.0, "Ex", 5.0, "In", 96.0, "Cm", 96 / 2.54, "Mm", 96 / 25.4, "Pt",
            96 / 72.0, "Pc", 16.0, "Percent", 1.0);

    /** A stream of numbers may go on after one; an attribute that holds one number may not, so it is an error here. */
    private static final Set<String> MORE_THAN_A_NUMBER = Set.of("parse_8", "parse_9", "parse_10");
    /** Read as lengths, their letters are units. */
    private static final Set<String> A_LENGTH = Set.of("parse_19", "parse_20");
    /** Farther away than any drawing may reach. */
    private static final Set<String> TOO_FAR = Set.of("parse_12", "parse_13", "parse_21");

    static Stream<GrammarCase> lengths() throws IOException {
        return GrammarCase.all("length");
    }

    static Stream<GrammarCase> numbers() throws IOException {
        return GrammarCase.all("number");
    }

    static Stream<GrammarCase> transforms() throws IOException {
        return GrammarCase.all("transform");
    }

    static Stream<GrammarCase> viewBoxes() throws IOException {
        return GrammarCase.all("viewbox");
    }

    @ParameterizedTest
    @MethodSource("lengths")
    void aLengthIsInUserUnits(GrammarCase c) {
        String unit = c.expected().asText().replaceAll(".*LengthUnit::(\\w+)\\).*", "$1");
        DrawnShape rect = Svg.shape("<rect font-size='10' x='" + c.input() + "' width='1' height='1'/>");
        assertEquals(UNITS.get(unit), rect.local().bounds().minX(), 1e-4);
    }

    @ParameterizedTest
    @MethodSource("numbers")
    void aNumberIsReadOrIsAnError(GrammarCase c) {
        String svg = Svg.page("<rect x='" + c.input() + "' width='1' height='1'/>");
        boolean error = c.expected().asText().equals("error");
        if (error || MORE_THAN_A_NUMBER.contains(c.name())) {
            assertTrue(Svg.problems(svg).matches("t.svg:2:1: <rect> (has x=|stands more).*"), Svg.problems(svg));
        } else if (TOO_FAR.contains(c.name())) {
            assertTrue(Svg.problems(svg).contains("100 m away"), Svg.problems(svg));
        } else if (!A_LENGTH.contains(c.name())) {
            DrawnShape rect = Svg.shape("<rect x='" + c.input() + "' width='1' height='1'/>");
            assertEquals(c.numbers()[0], rect.local().bounds().minX(), 1e-5);
        }
    }

    @ParameterizedTest
    @MethodSource("transforms")
    void aTransformIsItsMatrix(GrammarCase c) {
        String body = "<g transform='" + c.input() + "'><rect width='1' height='1'/></g>";
        if (c.name().startsWith("parse_err")) {
            assertTrue(Svg.problems(Svg.page(body)).startsWith("t.svg:2:1: <g> has transform="));
            return;
        }
        double[] m = c.numbers();
        DrawnShape rect = Svg.shape(body);
        double[] found = {
            rect.toItem().a(),
            -rect.toItem().b(),
            rect.toItem().c(),
            -rect.toItem().d(),
            rect.toItem().e() + 50,
            25 - rect.toItem().f()
        };
        for (int i = 0; i < 6; i++) {
            assertEquals(m[i], found[i], 1e-5);
        }
    }

    @ParameterizedTest
    @MethodSource("viewBoxes")
    void aViewBoxIsFourNumbersWithASize(GrammarCase c) {
        Problems problems = new Problems();
        Optional<SvgElement> root = SvgReader.read(
                "t.svg",
                Svg.bytes("<svg xmlns='http://www.w3.org/2000/svg' width='10mm' height='50mm' viewBox='" + c.input()
                        + "'/>"),
                problems);
        Optional<Frame> frame = FrameReader.read(root.orElseThrow(), problems);
        if (c.name().startsWith("parse_err")) {
            assertTrue(
                    problems.sorted().get(0).message().startsWith("viewBox=\"" + c.input() + "\" is not four numbers"));
        } else {
            assertEquals(List.of(), problems.sorted());
            assertEquals(new Box(-20, 30, 80, 530), frame.orElseThrow().viewBox());
        }
    }
}
