/**
 * Reads a run back and proves it: takes the run folder, and what its plates are held to from the run's own inputs, and tells
 * what is not as it must be as problems. It reads plate files with a reader of its own, since a proof by the writer's code
 * would prove nothing: it may not import {@code format}, and uses neither {@code drawing}'s writer nor {@code store}'s reader
 * of plates.
 */
package dev.quoin.verify;
