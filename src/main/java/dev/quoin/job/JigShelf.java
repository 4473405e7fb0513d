package dev.quoin.job;

import dev.quoin.geometry.Point;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Jig;
import dev.quoin.shop.JigReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The jigs of a job, each read once. */
final class JigShelf {
    private final InputFiles files;
    private final Optional<Point> centre;
    private final Map<Path, Optional<Jig>> jigs = new HashMap<>();

    /**
     * An empty shelf.
     *
     * @param centre the point of every jig that stands at the field's centre, if the user says which
     */
    JigShelf(InputFiles files, Optional<Point> centre) {
        this.files = files;
        this.centre = centre;
    }

    /**
     * The jig of a file; its problems are told once.
     *
     * @param namedAt the cell that names it; empty if the job does
     * @throws IOException if the job names it and it cannot be read
     */
    Optional<Jig> take(Path file, Optional<Place> namedAt, Problems problems) throws IOException {
        Optional<Jig> known = jigs.get(file);
        if (known == null) {
            known = files.find(file, "jig", namedAt, problems)
                    .flatMap(bytes -> read(files.nameOf(file), bytes, problems))
                    .map(jig -> centre.map(jig::centredAt).orElse(jig));
            jigs.put(file, known);
        }
        return known;
    }

    /** A jig of these bytes; {@code name} tells a drawing from a table. */
    static Optional<Jig> read(String name, byte[] bytes, Problems problems) {
        if (name.toLowerCase(Locale.ROOT).endsWith(".svg")) {
            return JigReader.svg(name, bytes, problems);
        }
        return JigReader.csv(name, bytes, problems);
    }
}
