package dev.quoin.job;

import dev.quoin.order.Order;
import dev.quoin.problem.Problems;
import dev.quoin.store.Run;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Which items of a prepared run may share a plate: those with the same key. */
final class GroupKeys {
    private final Run run;
    private final RunBook book;
    /** The indexes of the columns of {@code --group-by}, by section. */
    private final Map<Integer, List<Integer>> columns = new HashMap<>();

    GroupKeys(Run run, RunBook book) {
        this.run = run;
        this.book = book;
    }

    /** Section, jig, lens, recipe, blank, and the values of {@code --group-by}. */
    List<String> of(RunItem item) throws IOException {
        RunPlate plate = book.plates().get(item.plate());
        List<String> key = new ArrayList<>(
                List.of(Integer.toString(item.section()), plate.jig(), plate.lens(), plate.recipe(), plate.blank()));
        for (int column : columns(item.section())) {
            key.add(item.cells().get(column).strip());
        }
        return key;
    }

    private List<Integer> columns(int section) throws IOException {
        List<Integer> known = columns.get(section);
        if (known == null) {
            known = new ArrayList<>();
            Optional<Order> order = Order.of(RunOrder.kept(run, section), new Problems());
            for (String name : RunShop.settings(run, section).list(JobKey.GROUP_BY)) {
                OptionalInt column = order.map(one -> one.column(name)).orElse(OptionalInt.empty());
                column.ifPresent(known::add);
            }
            columns.put(section, known);
        }
        return known;
    }
}
