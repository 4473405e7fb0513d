package dev.quoin.plate;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The ways in which a loaded jig can stand to be marked.
 *
 * @param front with the front of the pieces up; at least one
 * @param back with their back up; empty where only the front is marked
 * @param overlap by how much strips of a round piece overlap where they must meet in ink, mm
 */
public record Stands(List<Stand> front, List<Stand> back, double overlap) {
    /** As it was loaded, the front up. */
    public static final Stands ONE = new Stands(List.of(Stand.LOADED), List.of(), 0);

    public Stands {
        front = List.copyOf(front);
        back = List.copyOf(back);
    }

    /** Front, and back if it is marked, each in all its stands. */
    public List<List<Stand>> faces() {
        List<List<Stand>> faces = new ArrayList<>();
        faces.add(front);
        if (!back.isEmpty()) {
            faces.add(back);
        }
        return faces;
    }

    /** Whether the jig can stand so. */
    public boolean allow(Stand stand) {
        return Stream.concat(front.stream(), back.stream()).anyMatch(stand::isLike);
    }
}
