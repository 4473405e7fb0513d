package dev.quoin.job;

import dev.quoin.order.ExtraPieces;
import dev.quoin.order.Item;
import dev.quoin.store.Run;
import dev.quoin.store.RunFolder;
import dev.quoin.table.TableRow;
import dev.quoin.table.TableWriter;
import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;

/** {@code inputs/spares.csv}: the pieces that a section of a run made over and above what its order asks for. */
final class RunSpares {
    static final String FILE = "spares.csv";

    private RunSpares() {}

    /** Writes it, if the plan of a job has such pieces. */
    static void write(LoadedJob job, RunFolder out) throws IOException {
        int rows = job.order().rows().size();
        int asked = rows == 0 ? 0 : numberAfter(job, rows - 1);
        List<Item> spares = job.items().subList(asked, job.items().size());
        if (spares.isEmpty()) {
            return;
        }
        try (Writer text =
                out.createText(Run.numbered(InputsWriter.FOLDER, job.section().number()) + FILE)) {
            TableWriter table = new TableWriter(text);
            table.row(List.of("after_rows", "row_index", "pieces", "line"));
            table.row(List.of(
                    Integer.toString(rows),
                    Integer.toString(spares.get(0).row().index()),
                    Integer.toString(spares.size()),
                    Integer.toString(spares.get(0).row().line())));
        }
    }

    /** How many items are numbered up to and with a row. */
    private static int numberAfter(LoadedJob job, int row) {
        for (int index = row; index >= 0; index--) {
            List<Item> own = job.items().ofRow(index);
            if (!own.isEmpty()) {
                return own.get(own.size() - 1).number();
            }
        }
        return 0;
    }

    /** Those of the sections up to and with one. */
    static List<ExtraPieces> through(Run run, int last) throws IOException {
        List<ExtraPieces> extras = new ArrayList<>();
        for (int section = 1; section <= last; section++) {
            String file = Run.numbered(InputsWriter.FOLDER, section) + FILE;
            if (run.has(file)) {
                for (TableRow row : run.table(file).rows()) {
                    extras.add(new ExtraPieces(whole(row, 0), whole(row, 1), whole(row, 2)));
                }
            }
        }
        return extras;
    }

    private static int whole(TableRow row, int cell) {
        return Integer.parseInt(row.cells().get(cell));
    }
}
