package dev.quoin.verify;

/**
 * What was proven of a run.
 *
 * @param files unchanged since they were written
 * @param items each on one slot of one plate, as the order asks for
 * @param plates whose sums add up
 * @param marks in their pockets and in reach
 * @param codes read back, and saying what the rows say
 * @param reprints equal to their originals
 * @param events in the record, as they were added
 */
public record Proof(int files, int items, int plates, long marks, int codes, int reprints, int events) {}
