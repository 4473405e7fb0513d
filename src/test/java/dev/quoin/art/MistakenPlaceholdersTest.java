package dev.quoin.art;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MistakenPlaceholdersTest {
    private static final Columns COLUMNS =
            new Columns(List.of("Name ", "Line 2"), List.of("name", "line_2"), Map.of(), Optional.empty());

    private static List<String> told(String text) {
        Problems problems = new Problems();
        MistakenPlaceholders.tell(text, COLUMNS, Place.of("tag.svg", 3), problems);
        return problems.sorted().stream().map(Problem::toString).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"{{name}}", "{ Name }", "<<NAME>>", "«name»", "%Name%", "[name]", "$name"})
    void aColumnBetweenOtherSignsIsAWarning(String meant) {
        assertEquals(
                List.of(
                        "tag.svg:3: warning: '" + meant
                                + "' is taken as it stands, and not as the value of column 'Name'; write ${name} if that is meant"),
                told("Dr " + meant + ", MD"));
    }

    @Test
    void eachIsTold() {
        assertEquals(2, told("{{name}} {{Line 2}}").size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"name", "{town}", "100 % cotton", "[A1]", "$5", "<3", "{}", "a {b} name"})
    void otherTextIsNobodysDoubt(String text) {
        assertEquals(List.of(), told(text));
    }
}
