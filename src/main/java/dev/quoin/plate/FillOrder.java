package dev.quoin.plate;

import dev.quoin.shop.Slot;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** The order in which a jig's slots are filled. Rows and columns are those of the jig as it is drawn, y up. */
public enum FillOrder {
    /** As the jig's file lists them. */
    FILE {
        @Override
        public List<Placement> sort(List<Placement> placements) {
            return List.copyOf(placements);
        }
    },
    /** Row after row from the top, each from the left. */
    ROWS {
        @Override
        public List<Placement> sort(List<Placement> placements) {
            return lines(placements, FillOrder::down, FillOrder::right).stream()
                    .flatMap(List::stream)
                    .toList();
        }
    },
    /** Column after column from the left, each from the top. */
    COLUMNS {
        @Override
        public List<Placement> sort(List<Placement> placements) {
            return lines(placements, FillOrder::right, FillOrder::down).stream()
                    .flatMap(List::stream)
                    .toList();
        }
    },
    /** Row after row from the top, the first from the left, the next from the right, and so on. */
    SERPENTINE {
        @Override
        public List<Placement> sort(List<Placement> placements) {
            List<List<Placement>> rows = lines(placements, FillOrder::down, FillOrder::right);
            for (int i = 1; i < rows.size(); i += 2) {
                Collections.reverse(rows.get(i));
            }
            return rows.stream().flatMap(List::stream).toList();
        }
    },
    /** The slots nearest to the field's centre first. */
    CENTRE_OUT {
        @Override
        public List<Placement> sort(List<Placement> placements) {
            return placements.stream()
                    .sorted(Comparator.comparingLong(placement -> Math.round(Math.hypot(
                                    placement.centre().x(), placement.centre().y())
                            / NEGLIGIBLE)))
                    .toList();
        }
    };

    /** Slots whose distances differ by less are equally far, mm. */
    private static final double NEGLIGIBLE = 1e-3;

    /** The jig's slots in this order; those that are equal in it keep theirs. */
    public abstract List<Placement> sort(List<Placement> placements);

    /** The word that chooses it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static double down(Slot slot) {
        return -slot.centre().y();
    }

    private static double right(Slot slot) {
        return slot.centre().x();
    }

    /** Slots that stand apart by less than half of the smallest pocket's shorter side are in one line. */
    private static List<List<Placement>> lines(
            List<Placement> placements, ToDoubleFunction<Slot> across, ToDoubleFunction<Slot> along) {
        double apart = placements.stream()
                        .mapToDouble(placement -> Math.min(
                                placement.slot().width(), placement.slot().height()))
                        .min()
                        .orElse(0)
                / 2;
        List<List<Placement>> lines = new ArrayList<>();
        double start = Double.NEGATIVE_INFINITY;
        for (Placement placement : sorted(placements, across)) {
            double at = across.applyAsDouble(placement.slot());
            if (at > start + apart) {
                lines.add(new ArrayList<>());
                start = at;
            }
            lines.get(lines.size() - 1).add(placement);
        }
        lines.replaceAll(line -> sorted(line, along));
        return lines;
    }

    private static List<Placement> sorted(List<Placement> placements, ToDoubleFunction<Slot> by) {
        List<Placement> sorted = new ArrayList<>(placements);
        sorted.sort(Comparator.comparingDouble(placement -> by.applyAsDouble(placement.slot())));
        return sorted;
    }
}
