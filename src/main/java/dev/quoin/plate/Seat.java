package dev.quoin.plate;

/**
 * An item in its place on a plate.
 *
 * @param item the item's number
 */
public record Seat(int item, Placement placement) {}
