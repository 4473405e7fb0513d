package dev.quoin.job;

/**
 * Which part of a run is prepared: all of it at first, later what an extension adds.
 *
 * @param number from 1
 * @param firstRow the index of the first row to prepare; those before were prepared with earlier sections
 * @param platesBefore how many plates the earlier sections have
 */
record Section(int number, int firstRow, int platesBefore) {
    /** A run that is prepared for the first time. */
    static final Section FIRST = new Section(1, 0, 0);
}
