package dev.quoin.job;

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
    private final JigStand stand;
    private final Map<Path, Optional<Jig>> jigs = new HashMap<>();

    /**
     * An empty shelf.
     *
     * @param stand how its jigs stand in the machine
     */
    JigShelf(InputFiles files, JigStand stand) {
        this.files = files;
        this.stand = stand;
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
                    .flatMap(jig -> stand.stand(jig, problems));
            jigs.put(file, known);
        }
        return known;
    }

    /** A jig that comes from no file, as it stands in the machine. */
    Optional<Jig> stand(Jig jig, Problems problems) {
        return stand.stand(jig, problems);
    }

    /** A jig of these bytes; {@code name} tells a drawing from a table. */
    static Optional<Jig> read(String name, byte[] bytes, Problems problems) {
        if (name.toLowerCase(Locale.ROOT).endsWith(".svg")) {
            return JigReader.svg(name, bytes, problems);
        }
        return JigReader.csv(name, bytes, problems);
    }
}
