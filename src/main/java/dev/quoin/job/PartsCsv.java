package dev.quoin.job;

import dev.quoin.plate.Part;
import dev.quoin.plate.Plate;
import dev.quoin.plate.Stand;
import dev.quoin.store.Run;
import dev.quoin.table.TableRow;
import dev.quoin.table.TableWriter;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * {@code parts.csv}: how the jig stands in each part of each plate, for runs in which it does not always stand as it was
 * loaded; others have no such table.
 */
final class PartsCsv {
    static final String FILE = "parts.csv";

    private static final List<String> HEADER = Stream.concat(Stream.of("plate", "part"), StandColumns.NAMES.stream())
            .toList();

    private PartsCsv() {}

    /** Whether these plates need the table. */
    static boolean isNeeded(List<Plate> plates) {
        return plates.stream()
                .flatMap(plate -> plate.parts().stream())
                .anyMatch(part -> !part.stand().equals(Stand.LOADED));
    }

    static void write(Appendable out, List<Plate> plates) throws IOException {
        TableWriter table = new TableWriter(out);
        table.row(HEADER);
        for (Plate plate : plates) {
            for (Part part : plate.parts()) {
                table.row(row(plate.number(), part));
            }
        }
    }

    private static List<String> row(int plate, Part part) {
        List<String> row = new ArrayList<>(List.of(Integer.toString(plate), Integer.toString(part.number())));
        row.addAll(StandColumns.cells(part.stand()));
        return row;
    }

    /**
     * How the jig stands in each part of a section of a run, by the numbers of plate and part; as it was loaded in those
     * that are not there.
     *
     * @throws IOException if the table was changed
     */
    static Map<Integer, Map<Integer, Stand>> stands(Run run, int section) throws IOException {
        Map<Integer, Map<Integer, Stand>> stands = new HashMap<>();
        String name = Run.numbered(FILE, section);
        for (TableRow row : run.has(name) ? run.table(name).rows() : List.<TableRow>of()) {
            stands.computeIfAbsent(Integer.valueOf(cell(row, "plate")), plate -> new HashMap<>())
                    .put(Integer.valueOf(cell(row, "part")), StandColumns.stand(column -> cell(row, column)));
        }
        return stands;
    }

    private static String cell(TableRow row, String column) {
        return row.cells().get(HEADER.indexOf(column));
    }
}
