package dev.quoin.job;

import dev.quoin.problem.Problems;
import dev.quoin.store.Run;
import dev.quoin.table.Table;
import dev.quoin.table.TableReader;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The order as a section of a run keeps it. */
final class RunOrder {
    private RunOrder() {}

    /** The order that the items up to and with this section's were numbered by. */
    static Table through(Run run, int section) throws IOException {
        return kept(run, section);
    }

    /** The one table among the section's inputs that has the columns which {@code items.csv} repeats. */
    static Table kept(Run run, int section) throws IOException {
        List<String> items = run.table(Run.numbered("items.csv", section)).headers();
        List<String> columns = items.subList(ItemsCsv.COLUMNS.size(), items.size());
        for (Map.Entry<String, byte[]> file :
                run.files(Run.numbered(InputsWriter.FOLDER, section)).entrySet()) {
            Optional<Table> table =
                    file.getKey().endsWith(".properties") || file.getKey().endsWith(".svg")
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
