package dev.quoin.paper;

/**
 * A row of the order that is on no plate.
 *
 * @param line of the order's file on which the row starts
 * @param items the numbers of its items, as text, such as {@code 12-14}; empty where it has none
 * @param reason why, without a full stop
 */
public record LeftOut(int line, String items, String reason) {}
