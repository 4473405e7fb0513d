package dev.quoin.job;

import dev.quoin.order.Order;
import dev.quoin.order.Row;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.problem.Suggestion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Something that is chosen for each row: by the cell of a column if it is not empty, else for the whole job. */
final class Role {
    private final Order order;
    private final JobSettings settings;
    private final JobKey forAll;
    private final OptionalInt column;

    /**
     * Finds the role's column.
     *
     * @param forAll the option that chooses for the whole job
     * @param byColumn the option that names a column
     */
    Role(Order order, JobSettings settings, JobKey forAll, JobKey byColumn, Problems problems) {
        this.order = order;
        this.settings = settings;
        this.forAll = forAll;
        this.column = column(order, settings, byColumn, problems);
    }

    /** The column that an option names; a name that the order does not have is a problem. */
    static OptionalInt column(Order order, JobSettings settings, JobKey key, Problems problems) {
        Optional<String> name = settings.text(key);
        return name.isPresent() ? column(order, name.get(), settings.place(key), key, problems) : OptionalInt.empty();
    }

    static OptionalInt column(Order order, String name, Place place, JobKey key, Problems problems) {
        OptionalInt found = order.column(name);
        if (found.isEmpty()) {
            problems.error(
                    place,
                    key.option() + ": the order has no column '" + name + "'",
                    Suggestion.remedy(name, order.headers()));
        }
        return found;
    }

    /** What is chosen for a row, if anything is. */
    Optional<String> of(Row row) {
        return cell(row).or(() -> settings.text(forAll));
    }

    /**
     * What is chosen for a row, as a path. Orders may come from strangers: a cell may name only files in the job's folder or
     * in the folder of the file that is chosen for the whole job.
     */
    Optional<Path> pathOf(Row row, Problems problems) throws IOException {
        Optional<String> cell = cell(row);
        return cell.isPresent() ? named(cell.get(), row, problems) : settings.path(forAll);
    }

    private Optional<Path> named(String name, Row row, Problems problems) throws IOException {
        Optional<Path> inside = Optional.empty();
        for (Path folder : folders()) {
            Optional<Path> file = OwnFolder.file(folder, name);
            if (file.isPresent() && Files.exists(file.get())) {
                return file;
            }
            inside = inside.or(() -> file);
        }
        if (inside.isEmpty()) {
            problems.error(
                    place(row),
                    "the " + forAll.option() + " '" + name + "' lies outside the job's folder",
                    "move it there, or beside the file that --" + forAll.option() + " names, and write its name alone");
        }
        return inside;
    }

    private List<Path> folders() {
        List<Path> folders = new ArrayList<>();
        folders.add(settings.folder());
        settings.path(forAll).map(Path::getParent).ifPresent(folders::add);
        return folders;
    }

    /** Whether the row itself chooses, rather than the job. */
    boolean isChosenBy(Row row) {
        return cell(row).isPresent();
    }

    /** Where the choice for a row stands. */
    Place place(Row row) {
        return isChosenBy(row) ? order.place(row, column.getAsInt()) : settings.place(forAll);
    }

    OptionalInt column() {
        return column;
    }

    JobKey key() {
        return forAll;
    }

    private Optional<String> cell(Row row) {
        return column.isEmpty()
                ? Optional.empty()
                : Optional.of(row.cells().get(column.getAsInt()).strip()).filter(text -> !text.isEmpty());
    }
}
