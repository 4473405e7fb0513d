package dev.quoin.job;

import java.nio.file.Path;

/**
 * What a proof comes to.
 *
 * @param pieces shown on it
 * @param file where it was written
 */
public record ProofSummary(int pieces, Path file) {}
