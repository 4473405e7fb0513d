package dev.quoin.order;

/**
 * One physical piece to mark.
 *
 * @param number from 1, in row order; never changes, nor closes up when a row is left out
 * @param row the row that asks for it
 * @param copy which of the row's pieces it is, from 1
 */
public record Item(int number, Row row, int copy) {}
