package dev.quoin.job;

import dev.quoin.art.Artwork;
import dev.quoin.art.SharedSizes;
import dev.quoin.order.Item;
import dev.quoin.order.Order;
import dev.quoin.order.Row;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * A row on its way through the survey.
 *
 * @param items those that it asks for, at least one
 * @param choice what is chosen for it; nothing if that has errors
 * @param artworks side by side, of each of its items that looks like no other of them, once it is merged
 * @param columns that its templates asked for
 * @param joined those in whose values a line break was set as a space
 * @param own problems found so far
 */
record SurveyedRow(
        Row row,
        List<Item> items,
        Optional<Choice> choice,
        List<List<Artwork>> artworks,
        BitSet columns,
        BitSet joined,
        Problems own) {
    /** A row for which something is chosen, or nothing could be. */
    static SurveyedRow begun(Row row, List<Item> items, Optional<Choice> choice, Problems own) {
        return new SurveyedRow(row, items, choice, List.of(), new BitSet(), new BitSet(), own);
    }

    /** The row with its artwork. */
    SurveyedRow merged(Order order) {
        List<List<Artwork>> merged = choice.map(chosen -> merged(chosen, order)).orElse(List.of());
        return new SurveyedRow(row, items, choice, merged, columns, joined, own);
    }

    private List<List<Artwork>> merged(Choice chosen, Order order) {
        List<List<Artwork>> merged = new ArrayList<>();
        for (Item item : items) {
            List<Artwork> sides = new ArrayList<>();
            for (ChosenTemplate side : chosen.sides()) {
                merged(item, chosen, side, order).ifPresent(sides::add);
            }
            if (sides.size() < chosen.sides().size()) {
                return merged;
            }
            merged.add(sides);
            if (sides.stream().noneMatch(artwork -> artwork.uses().ownToItem())) {
                return merged;
            }
        }
        return merged;
    }

    /** Of two sides, problems say on which they are. */
    private Optional<Artwork> merged(Item item, Choice chosen, ChosenTemplate side, Order order) {
        Problems found = new Problems();
        Optional<Artwork> artwork =
                side.template().merge(item, order.place(row), chosen.group().recipe(), SharedSizes.none(), found);
        artwork.map(Artwork::uses).ifPresent(uses -> {
            columns.or(uses.columns());
            joined.or(uses.joined());
        });
        boolean tells = chosen.sides().size() > 1;
        found.sorted().forEach(one -> own.add(tells && isHere(order, one) ? on(side, one) : one));
        return artwork;
    }

    private static Problem on(ChosenTemplate side, Problem problem) {
        return new Problem(
                problem.severity(),
                problem.place(),
                problem.item(),
                problem.message() + " (template " + side.name() + ")",
                problem.remedy());
    }

    /** The number of its first item. */
    int number() {
        return items.get(0).number();
    }

    /** Tells its problems, those at its own place with its first item. */
    void tell(Order order, Problems problems) {
        own.sorted().forEach(problem -> problems.add(isHere(order, problem) ? problem.inItem(number()) : problem));
    }

    private boolean isHere(Order order, Problem problem) {
        return problem.place().file().equals(order.file()) && problem.place().line() == row.line();
    }
}
