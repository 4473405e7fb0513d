package dev.quoin.job;

import dev.quoin.problem.Place;
import java.nio.file.Path;

/**
 * A value that the user set.
 *
 * @param value as it was written
 * @param place where
 * @param base the folder that a relative path starts from
 */
public record Setting(String value, Place place, Path base) {
    /** The value as a path. */
    Path path(String text) {
        return base.resolve(text).normalize();
    }
}
