package dev.quoin.order;

/**
 * Pieces of a row that are made over and above its quantity. Their numbers follow those of all rows up to some row, which
 * keep theirs.
 *
 * @param afterRows how many rows, from the first, are numbered before them
 * @param row the index of their row
 * @param count how many
 */
public record ExtraPieces(int afterRows, int row, int count) {}
