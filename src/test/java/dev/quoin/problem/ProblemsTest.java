package dev.quoin.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProblemsTest {
    private static final Place CELL = new Place("order.csv", 14, 3);

    @Test
    void anErrorIsOneLineWithPlaceFactAndRemedy() {
        Problem problem = Problem.error(CELL, "Name: too long for its box", "shorten it");
        assertEquals("order.csv:14:3: Name: too long for its box; shorten it", problem.toString());
    }

    @Test
    void aWarningSaysThatItIsOne() {
        assertEquals(
                "tray.csv: warning: slot A1 is out of reach",
                Problem.warning(Place.of("tray.csv"), "slot A1 is out of reach", "")
                        .toString());
    }

    @Test
    void aValueWithLineBreaksDoesNotBreakTheLine() {
        assertEquals(
                "a: 'x y' is wrong; z",
                Problem.error(Place.of("a"), "'x\r\ny' is wrong", "z").toString());
    }

    @Test
    void anOptionThatIsThePlaceIsNamedOnce() {
        Problem typed = Problem.warning(Place.of("--flip"), "flip: no back is given", "give one");
        assertEquals("--flip: warning: no back is given; give one", typed.toString());
        Problem inFile = Problem.warning(Place.of("job.properties", 3), "flip: no back is given", "");
        assertEquals("job.properties:3: warning: flip: no back is given", inFile.toString());
    }

    @Test
    void problemsComeByFileThenLineAsNumbersThenColumn() {
        Problems problems = new Problems();
        problems.error(Place.of("order.csv", 10), "ten", "");
        problems.error(Place.of("order.csv", 9).at(2), "nine two", "");
        problems.warning(Place.of("order.csv", 9).at(2), "a warning after the error", "");
        problems.error(Place.of("order.csv", 9), "nine", "");
        problems.error(Place.of("jig.csv"), "jig", "");
        assertEquals(
                List.of("jig", "nine", "nine two", "a warning after the error", "ten"),
                problems.sorted().stream().map(Problem::message).toList());
    }

    @Test
    void theSameProblemTwiceCountsOnce() {
        Problems problems = new Problems();
        problems.error(CELL, "a", "b");
        problems.error(CELL, "a", "b");
        assertEquals(1, problems.errors());
        assertEquals(1, problems.sorted().size());
    }

    @Test
    void warningsAndNotesAreNoErrors() {
        Problems problems = new Problems();
        problems.warning(CELL, "a", "");
        problems.note(CELL, "b", "");
        assertFalse(problems.hasErrors());
        Problems all = new Problems();
        all.error(CELL, "c", "");
        all.addAll(problems);
        assertTrue(all.hasErrors());
        assertEquals(3, all.sorted().size());
    }

    @ParameterizedTest
    @CsvSource({
        "recipie, recipe",
        "Jgi, jig",
        "engrav, engrave",
        "lens, lens",
    })
    void aNearNameIsFound(String given, String meant) {
        assertEquals(
                Optional.of(meant), Suggestion.nearest(given, List.of("recipe", "jig", "engrave", "lens", "blank")));
    }

    @Test
    void aFarNameIsNotGuessed() {
        assertEquals(Optional.empty(), Suggestion.nearest("customer", List.of("recipe", "jig")));
        assertEquals("known: recipe, jig", Suggestion.remedy("customer", List.of("recipe", "jig")));
        assertEquals("none is known", Suggestion.remedy("customer", List.of()));
        assertEquals("did you mean 'jig'?", Suggestion.remedy("gig", List.of("recipe", "jig")));
    }

    @Test
    void warningsAndNotesBeyondTheMostAreCountedAndErrorsAreAllKept() {
        Problems problems = new Problems();
        for (int i = 1; i <= Problems.MOST + 5; i++) {
            problems.note(Place.of("order.csv", i), "nothing is made for this row", "");
        }
        assertFalse(problems.tooMany());
        for (int i = 1; i <= Problems.MOST + 5; i++) {
            problems.error(Place.of("order.csv", i), "too long", "shorten it");
        }
        assertTrue(problems.tooMany());
        assertEquals(Problems.MOST + 5, problems.errors());
        assertEquals(2 * Problems.MOST + 6, problems.sorted().size());
        assertEquals(
                "order.csv: note: 5 more warnings and notes are not listed",
                problems.sorted().get(0).toString());
    }
}
