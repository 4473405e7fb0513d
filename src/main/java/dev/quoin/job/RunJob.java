package dev.quoin.job;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.store.Run;
import dev.quoin.table.Table;
import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;

/** The job of a run, read again from what the run keeps. */
final class RunJob {
    private RunJob() {}

    /**
     * The job with the rows up to and with a section's.
     *
     * @throws IOException if it cannot be read
     */
    static LoadedJob load(Run run, int section) throws IOException {
        Problems problems = new Problems();
        Table order = RunOrder.through(run, section);
        Path inputs = run.folder().resolve(Run.numbered(InputsWriter.FOLDER, section));
        return new JobLoader(settings(run, inputs.resolve(order.file())), problems)
                .extending(
                        new Section(section, firstRow(run, section), 0),
                        order,
                        KeptFiles.of(run),
                        RunSpares.through(run, section))
                .load()
                .orElseThrow(() -> new IOException(
                        "the run's job cannot be read: " + problems.sorted().get(0)));
    }

    private static int firstRow(Run run, int section) throws IOException {
        return section == 1 ? 0 : RunOrder.through(run, section - 1).rows().size();
    }

    /** The run's settings, with its own shop, for an order. */
    static JobSettings settings(Run run, Path order) throws IOException {
        JobSettings kept = RunShop.settings(run, 1);
        Map<JobKey, Setting> given = new EnumMap<>(JobKey.class);
        given.putAll(kept.given());
        Path inputs = run.folder().resolve(InputsWriter.FOLDER);
        given.put(JobKey.SHOP, new Setting("shop", Place.of(InputsWriter.FOLDER), inputs));
        // It is for the one jig that was part-filled then.
        given.remove(JobKey.FIRST_SLOT);
        // Its plate was filled then.
        given.remove(JobKey.FILL_SPARES);
        Path file = order.toAbsolutePath().normalize();
        return new JobSettings(run.name(), file, file.getParent(), kept.workingFolder(), given);
    }
}
