package dev.quoin.job;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.store.LogBook;
import dev.quoin.table.Table;
import dev.quoin.table.TableReader;
import dev.quoin.table.TableRow;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Finds the items that a request means. */
final class ReprintItems {
    private static final String REMEDY = "see the numbers on the run sheet";

    private final ReprintRequest request;
    private final RunBook book;
    private final Problems problems;
    private final SortedSet<Integer> numbers = new TreeSet<>();

    ReprintItems(ReprintRequest request, RunBook book, Problems problems) {
        this.request = request;
        this.book = book;
        this.problems = problems;
    }

    /** The items, each once; what the run has not is a problem. */
    List<RunItem> find(LogBook log) throws IOException {
        request.items().forEach(item -> add(item, Place.of("items.csv")));
        for (int plate : request.plates()) {
            if (!book.plates().containsKey(plate)) {
                problems.error(Place.of("plates.csv"), "the run has no plate " + plate, REMEDY);
            }
            book.itemsOf(plate).forEach(item -> numbers.add(item.number()));
        }
        if (request.failed().isPresent()) {
            read(request.failed().get());
        }
        if (request.failedInLog()) {
            SortedMap<Integer, String> open =
                    new TreeMap<>(RunProgress.of(book, log).failed());
            if (open.isEmpty()) {
                problems.error(
                        Place.of("record/log.csv"),
                        "no item is recorded as failed and not yet reprinted",
                        "record failures with quoin done, or name the items with --item");
            }
            numbers.addAll(open.keySet());
        }
        return new ArrayList<>(numbers.stream().map(book.items()::get).toList());
    }

    private void read(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new NoSuchFileException(file.toString(), null, "there is no such table; check its name");
        }
        String name = file.getFileName().toString();
        Optional<Table> table = TableReader.read(name, Files.readAllBytes(file), Optional.empty(), problems);
        if (table.isEmpty()) {
            return;
        }
        int column = table.get().headers().stream().map(String::strip).toList().indexOf("item");
        if (column < 0) {
            problems.error(Place.of(name), "no column 'item'", "name the column with the items' numbers so");
            return;
        }
        for (TableRow row : table.get().rows()) {
            Place place = table.get().place(row, column);
            Optional<SortedSet<Integer>> cell = ItemNumbers.parse(row.cells().get(column));
            if (cell.isEmpty()) {
                problems.error(
                        place,
                        "'" + row.cells().get(column) + "' is no item number",
                        "write one such as 37, or a list such as 37,52-54");
            }
            cell.ifPresent(items -> items.forEach(item -> add(item, place)));
        }
    }

    private void add(int item, Place place) {
        if (book.items().containsKey(item)) {
            numbers.add(item);
        } else {
            problems.error(place, "the run has no item " + item, REMEDY);
        }
    }
}
