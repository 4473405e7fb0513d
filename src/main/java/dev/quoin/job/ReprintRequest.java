package dev.quoin.job;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;

/**
 * What is to be marked again, and how.
 *
 * @param items by number
 * @param plates by number; all their items are meant
 * @param failed a table with a column {@code item}, whose cells are numbers or lists of them
 * @param failedInLog whether the items are meant that the record has as failed and not yet reprinted
 * @param slot where to mark the one item instead of its own slot
 * @param pack whether items are gathered on as few fresh plates as possible, instead of each in its own slot
 * @param onlySteps the numbers or processes of the steps to repeat; all if empty
 * @param plateFormats the kinds of plate file to write; those of the run if empty
 * @param sheets the kinds of paper to write; those of the run if empty
 * @param reason for the record and the sheet; may be empty
 */
public record ReprintRequest(
        SortedSet<Integer> items,
        SortedSet<Integer> plates,
        Optional<Path> failed,
        boolean failedInLog,
        Optional<String> slot,
        boolean pack,
        List<String> onlySteps,
        List<String> plateFormats,
        List<String> sheets,
        String reason) {}
