package dev.quoin.job;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a prepared run comes to.
 *
 * @param folder where it is, or would be
 * @param sheets the files of the run sheet, in its folder
 * @param blanks how many of each blank are to be laid out, by name; {@link #UNNAMED} where the job names none
 * @param spares how many of each are advised on top of that
 * @param rowsLeftOut rows that were left out because of errors
 * @param marking beam time, jumps and settling included, s
 * @param handling loading, plates and set-ups, s
 */
public record RunSummary(
        String name,
        Path folder,
        List<String> sheets,
        int plates,
        int items,
        Map<String, Integer> blanks,
        Map<String, Integer> spares,
        int rowsLeftOut,
        double marking,
        double handling) {
    /** Stands for the name of a blank where the job names none. */
    public static final String UNNAMED = "";

    /** What a run of no plates comes to. */
    static final RunSummary NOTHING = new RunSummary("", Path.of(""), List.of(), 0, 0, Map.of(), Map.of(), 0, 0, 0);

    /** The same run, in a folder. */
    RunSummary at(Path newFolder) {
        return new RunSummary(name, newFolder, sheets, plates, items, blanks, spares, rowsLeftOut, marking, handling);
    }

    /** The same run where all items are marks on one piece, some of which only label the others. */
    RunSummary onOnePiece(int marksThatCount) {
        Map<String, Integer> one = new TreeMap<>(blanks);
        one.replaceAll((blank, count) -> 1);
        Map<String, Integer> none = new TreeMap<>(spares);
        none.replaceAll((blank, count) -> 0);
        return new RunSummary(name, folder, sheets, plates, marksThatCount, one, none, rowsLeftOut, marking, handling);
    }

    /** All of it, s. */
    public double total() {
        return marking + handling;
    }
}
