package dev.quoin.job;

import dev.quoin.order.Items;
import dev.quoin.order.Order;
import dev.quoin.plate.LoadedItem;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.store.DamagedFileException;
import dev.quoin.store.LogBook;
import dev.quoin.store.ReprintFolder;
import dev.quoin.store.Run;
import dev.quoin.store.RunLog;
import dev.quoin.verify.CodeCheck;
import dev.quoin.verify.ListedFiles;
import dev.quoin.verify.OrderCheck;
import dev.quoin.verify.PlateCheck;
import dev.quoin.verify.Proof;
import dev.quoin.verify.RecordCheck;
import dev.quoin.verify.ReprintCheck;
import dev.quoin.verify.RoundCheck;
import dev.quoin.verify.RunClaims;
import dev.quoin.verify.SideCheck;
import dev.quoin.verify.TableCheck;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedSet;
import java.util.stream.Collectors;

/**
 * Proves a run: first that its files are what they were, then, if the tables and inputs can be trusted, that they say the
 * same as the plate files and the order, then that the reprints mark what was marked before.
 */
public final class Verify {
    private final Path folder;
    private final Problems problems = new Problems();

    public Verify(Path folder) {
        this.folder = folder;
    }

    /**
     * Reads everything once.
     *
     * @return nothing if anything is not proven; the problems tell what
     * @throws IOException if there is no run or it cannot be read
     */
    public Outcome<Proof> run() throws IOException {
        Optional<Proof> proof;
        try {
            proof = prove();
        } catch (DamagedFileException e) {
            problems.error(Place.of(e.file()), e.reason(), "restore it from a copy, or prepare the run again");
            proof = Optional.empty();
        }
        return new Outcome<>(problems.hasErrors() ? Optional.empty() : proof, problems.sorted());
    }

    private Optional<Proof> prove() throws IOException {
        Run run = Run.open(folder);
        ListedFiles listed = ListedFiles.of(run, problems);
        LogBook log = new RunLog(run.folder()).read();
        listed.checkNames();
        Set<String> plateFiles = listed.names().stream()
                .filter(name -> name.matches("plate-[^/]*\\.svg"))
                .filter(name -> !name.endsWith(FileNames.FIRST_PIECE + ".svg"))
                .collect(Collectors.toSet());
        listed.checkHashes(plateFiles);
        RecordCheck.checkLines(log, problems);
        if (problems.hasErrors()) {
            listed.checkHashes(listed.names().stream()
                    .filter(name -> !plateFiles.contains(name))
                    .collect(Collectors.toSet()));
            return Optional.empty();
        }
        Optional<RunClaims> claims = RunClaims.read(run, problems);
        if (claims.isEmpty()) {
            return Optional.empty();
        }
        new TableCheck(claims.get(), problems).check();
        checkOrder(run);
        Fixtures fixtures = new Fixtures(run);
        new SideCheck(claims.get(), fixtures::of, problems).check();
        long marks = checkPlates(run, listed, claims.get(), fixtures);
        SortedSet<Integer> reprints = new ReprintFolder(run.folder()).whole();
        new RecordCheck(claims.get(), reprints, problems).check(log);
        int codes = 0;
        if (!problems.hasErrors()) {
            codes = new CodeCheck(run.folder(), claims.get(), fixtures::of, problems)
                    .check(new RunCodes(run, RunBook.of(run)).expected());
            checkRound(run, claims.get(), fixtures);
            ReprintCheck check = new ReprintCheck(run.folder(), claims.get(), fixtures::of, problems);
            for (int reprint : reprints) {
                check.check(reprint);
            }
        }
        return Optional.of(new Proof(
                listed.count(),
                claims.get().byNumber().size(),
                claims.get().filesByPlate().size(),
                marks,
                codes,
                reprints.size(),
                log.events().size()));
    }

    private void checkOrder(Run run) throws IOException {
        int first = 1;
        for (int section = 1; section <= run.sections(); section++) {
            Problems none = new Problems();
            Optional<Order> order = Order.of(RunOrder.through(run, section), none);
            if (order.isEmpty()) {
                problems.error(Place.of(Run.numbered(InputsWriter.FOLDER, section)), "the order cannot be read", "");
                return;
            }
            JobSettings settings = RunShop.settings(run, section);
            OptionalInt quantity = Role.column(order.get(), settings, JobKey.QUANTITY_COLUMN, none);
            Items items = Items.of(order.get(), quantity, none).with(RunSpares.through(run, section));
            new OrderCheck(
                            order.get(),
                            run.table(Run.numbered("items.csv", section)),
                            run.table(Run.numbered("problems.csv", section)),
                            problems)
                    .check(items, first);
            first = items.size() + 1;
        }
    }

    private void checkRound(Run run, RunClaims claims, Fixtures fixtures) throws IOException {
        for (int section = 1; section <= run.sections(); section++) {
            RunDrawings drawings = new RunDrawings(run, RunBook.of(run), section);
            if (drawings.areRound()) {
                RoundCheck check = new RoundCheck(run.folder(), claims, fixtures::of, drawings.hatched(), problems);
                for (LoadedItem item : drawings.all()) {
                    check.check(item);
                }
            }
        }
    }

    /** All plates, several at once; what is found is told in their order. */
    private long checkPlates(Run run, ListedFiles listed, RunClaims claims, Fixtures fixtures) throws IOException {
        List<PlateCheck> checks = claims.checks(run.folder(), listed, fixtures::of);
        long marks = 0;
        try {
            List<PlateCheck.Result> results =
                    checks.parallelStream().map(Verify::result).toList();
            for (PlateCheck.Result result : results) {
                problems.addAll(result.problems());
                marks += result.marks();
            }
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        return marks;
    }

    private static PlateCheck.Result result(PlateCheck check) {
        try {
            return check.check();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
