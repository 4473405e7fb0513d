package dev.quoin.job;

import dev.quoin.optics.Beam;
import dev.quoin.optics.LensChange;
import dev.quoin.plate.Group;
import dev.quoin.plate.GroupSurvey;
import dev.quoin.plate.Part;
import dev.quoin.plate.Plate;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Blank;
import dev.quoin.shop.Lens;
import dev.quoin.shop.Machine;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Works a surveyed job out through one lens after another. Marking goes by the real strokes, as for a run that is written. */
final class LensQuotes {
    private final LoadedJob job;
    private final Survey survey;
    private final Progress progress;
    private final Machine machine;
    /** Lenses that fill the same slots with the same items take the same time. */
    private final Map<List<List<Part>>, RunSummary> worked = new HashMap<>();

    LensQuotes(LoadedJob job, Survey survey, Progress progress) {
        this.job = job;
        this.survey = survey;
        this.progress = progress;
        this.machine = job.shop().machine();
    }

    Collection<Lens> lenses() {
        return job.shop().lenses().values();
    }

    QuoteLine line(Lens lens) throws IOException {
        Problems own = new Problems();
        Plan plan = new Layout(job, own).plan(survey.through(group -> group.through(lens)));
        Optional<String> refusal = own.sorted().stream()
                .filter(Problem::isError)
                .map(Problem::message)
                .findFirst();
        Reach reach = Reach.of(plan.slots());
        RunSummary summary = refusal.isPresent() ? RunSummary.NOTHING : work(plan);
        return new QuoteLine(
                jigs(),
                lens.name(),
                lens.field(),
                reach.reached(),
                reach.usable(),
                summary.plates(),
                summary.marking(),
                summary.handling(),
                Beam.of(machine).spot(lens.focalLength()),
                fluence(lens),
                refusal);
    }

    private RunSummary work(Plan plan) throws IOException {
        List<List<Part>> parts = plan.plates().stream().map(Plate::parts).toList();
        RunSummary known = worked.get(parts);
        if (known != null) {
            return known;
        }
        RunTotals totals = new RunTotals(machine, plan.spoilage());
        PlateWorker worker = new PlateWorker(job.making(plan.items()), plan);
        for (Plate plate : plan.plates()) {
            progress.report("working out plates", plate.number(), plan.plates().size());
            totals.take(worker.time(plate), List.of());
        }
        RunSummary summary = totals.summary(job.settings().name(), Path.of(""), List.of(), 0);
        worked.put(parts, summary);
        return summary;
    }

    /** How many items there are to mark. */
    int items() {
        return blanks().values().stream().mapToInt(Integer::intValue).sum();
    }

    /** How many of each blank they are made from. */
    Map<String, Integer> blanks() {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (GroupSurvey group : survey.groups()) {
            String blank = group.group().blank().map(Blank::name).orElse(RunSummary.UNNAMED);
            for (int row : survey.rowsOfGroup().getOrDefault(group, List.of())) {
                counts.merge(blank, job.items().ofRow(row).size(), Integer::sum);
            }
        }
        return counts;
    }

    private String jigs() {
        return groups().map(group -> group.jig().name()).distinct().collect(Collectors.joining(", "));
    }

    private Map<String, Double> fluence(Lens used) {
        Map<String, Double> ratios = new LinkedHashMap<>();
        groups().map(Group::recipe).forEach(recipe -> {
            Lens proven = job.shop().lenses().get(recipe.lens());
            if (proven != null && !recipe.steps().isEmpty()) {
                LensChange change =
                        LensChange.of(machine, proven, used, recipe.steps().get(0));
                ratios.put(recipe.name(), change.fluence());
            }
        });
        return ratios;
    }

    private Stream<Group> groups() {
        return survey.groups().stream().map(GroupSurvey::group);
    }
}
