package dev.quoin.paper;

import dev.quoin.geometry.Path;
import java.util.IdentityHashMap;
import java.util.Map;

/**
 * The outlines that a page has drawn before, so that artwork that all pieces share is written once. Constant artwork is one
 * object for all pieces; only so many outlines are remembered.
 */
final class SharedOutlines {
    private static final int MOST_REMEMBERED = 20_000;

    private final Map<Path, Map<String, String>> ids = new IdentityHashMap<>();
    private int drawn;

    /** Whether an outline has not been drawn so before; from now on it has. */
    boolean isNew(Path path, String kind) {
        if (ids.getOrDefault(path, Map.of()).containsKey(kind)) {
            return false;
        }
        drawn++;
        if (drawn <= MOST_REMEMBERED) {
            ids.computeIfAbsent(path, made -> new java.util.HashMap<>()).put(kind, "m" + drawn);
        }
        return true;
    }

    /** The id of an outline in the page; empty if it was not remembered. */
    String id(Path path, String kind) {
        return ids.getOrDefault(path, Map.of()).getOrDefault(kind, "");
    }
}
