package dev.quoin.paper;

import java.util.List;

/**
 * A part of a plate as the operator needs it.
 *
 * @param number from 1
 * @param files its files' names, in working order
 * @param before what to do before it, a sentence without a full stop; empty if nothing
 * @param items the numbers of the items that are marked in it, as text, such as {@code 1-4, 9}
 * @param seconds marking, and what is to be done before it, s
 */
public record PartView(int number, List<String> files, String before, String items, double seconds) {
    public PartView {
        files = List.copyOf(files);
    }
}
