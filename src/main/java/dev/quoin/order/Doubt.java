package dev.quoin.order;

/**
 * Something about a value that an order clerk would ask the customer.
 *
 * @param message what is doubtful, without the column's name
 */
record Doubt(String message, String remedy) {}
