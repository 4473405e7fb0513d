package dev.quoin.order;

import dev.quoin.problem.Problems;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.RandomAccess;

/**
 * All items of an order, numbered 1 to N in row order: the item at index i has number i + 1. Each is made when asked
 * for; what is kept is one number a row.
 */
public final class Items extends AbstractList<Item> implements RandomAccess {
    /** The most pieces that one row may ask for. */
    public static final int MOST_A_ROW = 10_000;
    /** The most pieces that one order may ask for. */
    public static final int MOST = 10_000_000;

    private final List<Row> rows;
    /** How many items the rows up to and with each one have. */
    private final int[] through;
    /** By where they are numbered. */
    private final List<ExtraPieces> extras;

    /** Numbers the items of rows; {@code quantities} has one number, 0 or more, a row. */
    Items(List<Row> rows, int[] quantities) {
        if (rows.size() != quantities.length) {
            throw new IllegalArgumentException(quantities.length + " quantities for " + rows.size() + " rows");
        }
        this.rows = rows;
        this.through = quantities.clone();
        this.extras = List.of();
        for (int row = 1; row < through.length; row++) {
            through[row] = Math.addExact(through[row - 1], through[row]);
        }
    }

    private Items(Items same, List<ExtraPieces> extras) {
        this.rows = same.rows;
        this.through = same.through;
        this.extras = extras.stream()
                .sorted(Comparator.comparingInt(ExtraPieces::afterRows))
                .toList();
    }

    /** The same rows with more pieces of some. */
    public Items with(List<ExtraPieces> more) {
        List<ExtraPieces> all = new ArrayList<>(extras);
        all.addAll(more);
        return all.isEmpty() ? this : new Items(this, all);
    }

    /**
     * The items of an order. An empty quantity is 1; 0 makes none and is noted; anything but a whole number up to
     * {@link #MOST_A_ROW} is an error at its cell, and the row counts as 1.
     *
     * @param quantityColumn its index, from 0; each row is one piece if there is none
     */
    public static Items of(Order order, OptionalInt quantityColumn, Problems problems) {
        List<Row> rows = order.rows();
        if (quantityColumn.isPresent()) {
            return new Items(rows, Quantities.read(order, quantityColumn.getAsInt(), problems));
        }
        int[] ones = new int[rows.size()];
        Arrays.fill(ones, 1);
        return new Items(rows, ones);
    }

    @Override
    public Item get(int index) {
        Objects.checkIndex(index, size());
        int before = 0;
        for (ExtraPieces extra : extras) {
            int first = before(extra.afterRows()) + before;
            if (index < first) {
                break;
            }
            if (index < first + extra.count()) {
                return new Item(index + 1, rows.get(extra.row()), copiesBefore(extra) + index - first + 1);
            }
            before += extra.count();
        }
        int row = rowOf(index - before);
        return new Item(index + 1, rows.get(row), index - before - before(row) + 1);
    }

    private int copiesBefore(ExtraPieces extra) {
        int copies = before(extra.row() + 1) - before(extra.row());
        for (ExtraPieces other : extras.subList(0, extras.indexOf(extra))) {
            copies += other.row() == extra.row() ? other.count() : 0;
        }
        return copies;
    }

    /** The item of a number, from 1. */
    public Item numbered(int number) {
        return get(number - 1);
    }

    @Override
    public int size() {
        return before(through.length) + extrasBefore(through.length);
    }

    /** The items that a row asks for, by its index, without extra pieces; empty where its quantity is 0. */
    public List<Item> ofRow(int rowIndex) {
        int before = extrasBefore(rowIndex);
        return subList(before(rowIndex) + before, before(rowIndex + 1) + before);
    }

    /** How many extra pieces are numbered before a row. */
    private int extrasBefore(int row) {
        return extras.stream()
                .filter(extra -> extra.afterRows() <= row)
                .mapToInt(ExtraPieces::count)
                .sum();
    }

    public List<Item> ofRow(Row row) {
        return ofRow(row.index());
    }

    private int before(int row) {
        return row == 0 ? 0 : through[row - 1];
    }

    /** The first row whose items reach past the index; rows of no items share their predecessor's number. */
    private int rowOf(int index) {
        int low = 0;
        int high = through.length - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (through[middle] > index) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }
}
