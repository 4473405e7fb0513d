package dev.quoin.plate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.geometry.Point;
import dev.quoin.problem.Place;
import dev.quoin.shop.Blank;
import dev.quoin.shop.Jig;
import dev.quoin.shop.Lens;
import dev.quoin.shop.Recipe;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Groups are put in the order of the fewest change-overs; a brute-force search agrees. */
class ChangeOversTest {
    @Test
    void groupsOfOneSetUpComeNextToOneAnother() {
        assertEquals(
                "steel-1 steel-2 brass-1",
                names(ChangeOvers.fewest(List.of(
                        group("steel", "tray", "1"), group("brass", "tray", "1"), group("steel", "tray", "2")))));
    }

    @Test
    void setUpsThatShareAJigComeNextToOneAnother() {
        assertEquals(
                "steel-a brass-b leather-c",
                names(ChangeOvers.fewest(List.of(
                        group("steel", "tray", "a"), group("leather", "board", "c"), group("brass", "tray", "b")))));
    }

    @Test
    void groupsThatLeaveAChoiceKeepTheirOrder() {
        assertEquals(
                "steel-a brass-b leather-c",
                names(ChangeOvers.fewest(
                        List.of(group("steel", "x", "a"), group("brass", "y", "b"), group("leather", "z", "c")))));
    }

    @Property(tries = 100, seed = "2026")
    void noOrderHasFewerChanges(@ForAll @Size(min = 1, max = 6) List<@IntRange(max = 26) Integer> kinds) {
        List<Group> groups = new ArrayList<>();
        for (int i = 0; i < kinds.size(); i++) {
            int kind = kinds.get(i);
            groups.add(group("r" + kind % 3, "j" + kind / 3 % 3, kind / 9 + "-" + i));
        }
        List<Group> ordered = ChangeOvers.fewest(groups);
        assertEquals(groups.size(), ordered.stream().distinct().count());
        assertTrue(ordered.containsAll(groups));
        assertEquals(leastChanges(groups, Optional.empty()), changes(ordered));
    }

    private static int leastChanges(List<Group> left, Optional<Group> before) {
        return IntStream.range(0, left.size())
                .map(i -> {
                    List<Group> rest = new ArrayList<>(left);
                    Group next = rest.remove(i);
                    return before.map(last -> changes(List.of(last, next))).orElse(0)
                            + leastChanges(rest, Optional.of(next));
                })
                .min()
                .orElse(0);
    }

    private static int changes(List<Group> order) {
        return IntStream.range(1, order.size())
                .map(i -> (order.get(i).recipe().equals(order.get(i - 1).recipe()) ? 0 : 1)
                        + (order.get(i).jig().equals(order.get(i - 1).jig()) ? 0 : 1))
                .sum();
    }

    private static Group group(String recipe, String jig, String value) {
        return new Group(
                new Recipe(recipe, List.of(), "", "", Place.of("recipes.csv")),
                Optional.<Blank>empty(),
                new Jig(jig, Point.ORIGIN, List.of()),
                new Lens("f160", 110, 160, 180, 0, ""),
                List.of(value));
    }

    private static String names(List<Group> groups) {
        return String.join(
                " ",
                groups.stream()
                        .map(group ->
                                group.recipe().name() + "-" + group.values().get(0))
                        .toList());
    }
}
