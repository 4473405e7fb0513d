package dev.quoin.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import dev.quoin.table.Table;
import dev.quoin.table.TableReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OrderTest {
    @ParameterizedTest
    @CsvSource({
        "Name, name",
        "'First name', first_name",
        "' First name ', first_name",
        "Serial no., serial_no_",
        "'Größe (mm)', größe__mm_",
        "İstanbul, i̇stanbul",
        "2nd line, _2nd_line",
        "-, _",
    })
    void aColumnIsAVariable(String header, String variable) {
        // "İ" lower-cases to i and a combining dot (Unicode SpecialCasing.txt), which is no letter.
        assertEquals(variable.replace("i\u0307", "i_"), Variables.name(header));
    }

    @Test
    void columnsAreFoundByHeaderThenByVariable() {
        Order order = order(" Name,name 2,NAME 3,4\na,b,c,d\n");
        assertEquals(List.of("name", "name_2", "name_3", "_4"), order.variables());
        assertEquals(OptionalInt.of(0), order.column(" Name"));
        assertEquals(OptionalInt.of(0), order.column("Name"));
        assertEquals(OptionalInt.of(2), order.column("NAME 3"));
        assertEquals(OptionalInt.of(1), order.column("name_2"));
        assertEquals(OptionalInt.of(3), order.column("_4"));
        assertEquals(OptionalInt.empty(), order.column("Nome"));
    }

    @Test
    void rowsKnowTheirPlaces() {
        Order order = order("a,b\n1,\"2\n3\"\n\n4,5\n");
        Row last = order.rows().get(1);
        assertEquals(new Row(1, 5, List.of("4", "5")), last);
        assertEquals(new Place("order.csv", 5, 2), order.place(last, 1));
        assertEquals(Place.of("order.csv", 5), order.place(last));
    }

    @Test
    void twoColumnsOfOneVariableNameAreAnError() {
        assertEquals(
                List.of(
                        "order.csv:1:2: columns 'First name' and 'first-name' would both be ${first_name} in a template; "
                                + "rename one"),
                problems("First name,first-name\na,b\n"));
    }

    @Test
    void aColumnCalledRowIsAnError() {
        assertEquals(
                List.of("order.csv:1:2: a column called 'Row', which templates need for the whole row; rename it"),
                problems("a,Row\na,b\n"));
    }

    @Test
    void headersAloneAreNoOrder() {
        assertEquals(
                List.of(
                        "order.csv:1: an order without rows, only the names of its columns; add a row for each thing to mark"),
                problems("a,b\n"));
    }

    private static List<String> problems(String csv) {
        Problems problems = new Problems();
        assertTrue(Order.of(table(csv), problems).isEmpty());
        return problems.sorted().stream().map(Problem::toString).toList();
    }

    static Order order(String csv) {
        return Order.of(table(csv), new Problems()).orElseThrow();
    }

    private static Table table(String csv) {
        return TableReader.read("order.csv", csv.getBytes(StandardCharsets.UTF_8), Optional.of(','), new Problems())
                .orElseThrow();
    }
}
