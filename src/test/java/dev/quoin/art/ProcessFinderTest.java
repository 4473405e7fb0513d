package dev.quoin.art;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.drawing.Element;
import dev.quoin.drawing.Names;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProcessFinderTest {
    private final Problems problems = new Problems();
    private final ProcessFinder finder = new ProcessFinder(Set.of("engrave", "outline", "cut"));

    /** Names as {@code id:class class}, the element's own first, then those above it. */
    @ParameterizedTest
    @CsvSource({
        "rim:cut, , cut",
        "cut:, , cut",
        "cut-2:, , cut",
        "a:b cut-12 c, , cut",
        "hole:, layer:outline, outline",
        "hole:cut, layer:outline, cut",
        "hole:guide, layer:cut, guide",
        "hole:, layer:, engrave",
        "cut-x:, , engrave",
    })
    void theNearestProcessWins(String own, String above, String process) {
        assertEquals(process, finder.find(element(own, above), problems));
        assertTrue(problems.sorted().isEmpty(), problems.sorted()::toString);
    }

    @Test
    void twoProcessesOnOneElementAreAnError() {
        finder.find(element("outline:cut", null), problems);
        assertEquals(
                "t.svg:3: <path id=\"outline\"> has two processes, cut and outline; leave one",
                problems.sorted().get(0).toString());
    }

    @Test
    void aNearMissIsAWarning() {
        assertEquals("engrave", finder.find(element("x:engrav", null), problems));
        assertEquals(
                "t.svg:3: warning: <path id=\"x\"> is called 'engrav', which is nearly the process 'engrave'; write"
                        + " 'engrave' if that is meant",
                problems.sorted().get(0).toString());
    }

    /** An editor shows the name of a layer; in the file it is a label, while the id is a number of the editor's own. */
    @Test
    void aLayerLabelledLikeAProcessIsAWarningOnceUnlessItIsSaidElsewhere() {
        Names layer = new Names("layer2", List.of(), "Cut");
        for (String id : List.of("rim", "hole")) {
            Element shape =
                    new Element("path", Place.of("t.svg", 3), List.of(new Names(id, List.of()), layer), Map.of());
            assertEquals("engrave", finder.find(shape, problems));
        }
        Names named = new Names("slit", List.of("cut"));
        assertEquals(
                "cut",
                finder.find(new Element("path", Place.of("t.svg", 5), List.of(named, layer), Map.of()), problems));
        assertEquals(
                List.of(
                        "t.svg:3: warning: <path id=\"rim\"> stands under the label 'Cut', but labels say no "
                                + "process; give what has the label (a layer, most likely) the id or class 'cut' if that is meant"),
                problems.sorted().stream().map(Problem::toString).toList());
    }

    @Test
    void aLabelThatSaysWhatIsDoneAnywayIsNoWarning() {
        List<Names> names = List.of(new Names("a", List.of()), new Names("layer1", List.of(), "Engrave"));
        assertEquals("engrave", finder.find(new Element("path", Place.of("t.svg", 3), names, Map.of()), problems));
        assertEquals(List.of(), problems.sorted());
    }

    private static Element element(String own, String above) {
        List<Names> names = Stream.of(own, above)
                .filter(Objects::nonNull)
                .map(text -> text.split(":", -1))
                .map(parts -> new Names(
                        parts[0],
                        Arrays.stream(parts[1].split(" "))
                                .filter(word -> !word.isEmpty())
                                .toList()))
                .toList();
        return new Element("path", Place.of("t.svg", 3), names, Map.of());
    }
}
