package dev.quoin.job;

import dev.quoin.problem.Problems;
import dev.quoin.store.Run;
import dev.quoin.store.RunFolder;
import dev.quoin.table.Table;
import dev.quoin.table.TableReader;
import dev.quoin.table.TableRow;
import dev.quoin.table.TableWriter;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The order as a section of a run keeps it. */
final class RunOrder {
    /** Lists the lines of the rows that an extension adds. */
    private static final String ADDED = "added-rows.csv";

    private RunOrder() {}

    /** The order that the items up to and with this section's were numbered by: first all rows of the run, then what was added. */
    static Table through(Run run, int section) throws IOException {
        Table order = kept(run, 1);
        for (int next = 2; next <= section; next++) {
            Set<String> added = new HashSet<>();
            run.table(Run.numbered(InputsWriter.FOLDER, next) + ADDED)
                    .rows()
                    .forEach(row -> added.add(row.cells().get(0)));
            Table now = kept(run, next);
            List<TableRow> rows = new ArrayList<>(order.rows());
            now.rows().stream()
                    .filter(row -> added.contains(Integer.toString(row.line())))
                    .forEach(rows::add);
            order = now.withRows(rows);
        }
        return order;
    }

    /** Keeps which rows of its order an extension adds. */
    static void writeAdded(RunFolder out, int section, Iterable<Integer> lines) throws IOException {
        try (Writer text = out.createText(Run.numbered(InputsWriter.FOLDER, section) + ADDED)) {
            TableWriter table = new TableWriter(text);
            table.row(List.of("line"));
            for (int line : lines) {
                table.row(List.of(Integer.toString(line)));
            }
        }
    }

    /** The one table among the section's inputs that has the columns which {@code items.csv} repeats. */
    static Table kept(Run run, int section) throws IOException {
        List<String> items = run.table(Run.numbered("items.csv", section)).headers();
        List<String> columns = items.subList(ItemsCsv.COLUMNS.size(), items.size());
        for (Map.Entry<String, byte[]> file :
                run.files(Run.numbered(InputsWriter.FOLDER, section)).entrySet()) {
            Optional<Table> table = file.getKey().equals(ADDED)
                            || file.getKey().equals(RunSpares.FILE)
                            || file.getKey().endsWith(".properties")
                            || file.getKey().endsWith(".svg")
                    ? Optional.empty()
                    : TableReader.read(file.getKey(), file.getValue(), separator(run, section), new Problems());
            if (table.isPresent() && ItemsCsv.columns(table.get().headers()).equals(columns)) {
                return table.get();
            }
        }
        throw new FileNotFoundException("the run keeps no order");
    }

    private static Optional<Character> separator(Run run, int section) throws IOException {
        return JobLoader.separator(RunShop.settings(run, section), new Problems());
    }
}
