package dev.quoin.order;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.util.Arrays;

/** Reads how many pieces each row asks for. */
final class Quantities {
    private Quantities() {}

    /** One number a row; a row with an error counts as 1. */
    static int[] read(Order order, int column, Problems problems) {
        int[] quantities = new int[order.rows().size()];
        long sum = 0;
        for (Row row : order.rows()) {
            if (problems.tooMany()) {
                break;
            }
            int quantity =
                    quantity(row.cells().get(column), order.headers().get(column), order.place(row, column), problems);
            quantities[row.index()] = quantity;
            sum += quantity;
        }
        if (sum > Items.MOST) {
            problems.error(
                    order.headerPlace(column), sum + " pieces in all, more than " + Items.MOST, "split the order");
            Arrays.fill(quantities, 1);
        }
        return quantities;
    }

    private static int quantity(String cell, String header, Place place, Problems problems) {
        String text = cell.strip();
        if (text.isEmpty()) {
            return 1;
        }
        if (!text.matches("[0-9]{1,9}")) {
            problems.error(
                    place,
                    header + ": '" + text + "' is no whole number",
                    "write a number from 0 to " + Items.MOST_A_ROW + ", or leave the cell empty for 1");
            return 1;
        }
        int quantity = Integer.parseInt(text);
        if (quantity > Items.MOST_A_ROW) {
            problems.error(
                    place,
                    header + ": " + text + " is more than " + Items.MOST_A_ROW,
                    "split the row, or correct the number");
            return 1;
        }
        if (quantity == 0) {
            problems.note(place, header + ": 0, so nothing is made for this row", "");
        }
        return quantity;
    }
}
