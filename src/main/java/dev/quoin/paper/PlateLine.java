package dev.quoin.paper;

import java.util.List;

/**
 * A plate in the list on the first page.
 *
 * @param number from 1
 * @param files its files' names, one a part
 * @param items how many
 * @param changes what to change on the machine before it
 * @param seconds marking and handling, s
 * @param endsAfter from the start of the run to the end of this plate, setting up included, s
 */
public record PlateLine(
        int number, List<String> files, int items, List<Change> changes, double seconds, double endsAfter) {
    public PlateLine {
        files = List.copyOf(files);
        changes = List.copyOf(changes);
    }
}
