package dev.quoin.job;

import dev.quoin.order.ExtraPieces;
import dev.quoin.order.Item;
import dev.quoin.order.Items;
import dev.quoin.order.Row;
import dev.quoin.plate.ChangeOvers;
import dev.quoin.plate.Filling;
import dev.quoin.plate.Group;
import dev.quoin.plate.GroupSurvey;
import dev.quoin.plate.LensChoice;
import dev.quoin.plate.LotPacking;
import dev.quoin.plate.OpenSlots;
import dev.quoin.plate.PackedLots;
import dev.quoin.plate.Part;
import dev.quoin.plate.PartPlan;
import dev.quoin.plate.Placement;
import dev.quoin.plate.Planner;
import dev.quoin.plate.RoundPlan;
import dev.quoin.plate.Seat;
import dev.quoin.plate.SlotState;
import dev.quoin.plate.Stand;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import dev.quoin.problem.Severity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

/** Lays surveyed groups onto plates, as the job asks. */
final class Layout {
    private final LoadedJob job;
    private final Problems problems;
    private final Optional<Lots> together;
    private final FillingReader fillings;
    private final Filling filling;
    private final double spoilage;

    Layout(LoadedJob job, Problems problems) {
        this.job = job;
        this.problems = problems;
        OptionalInt column = Role.column(job.order(), job.settings(), JobKey.KEEP_TOGETHER, problems);
        this.fillings = new FillingReader(job.settings(), problems);
        this.filling = fillings.read();
        this.spoilage = Spoilage.rate(job.settings(), problems);
        this.together = column.isPresent() ? Optional.of(new Lots(job, column.getAsInt())) : Optional.empty();
    }

    /** The survey with the lens of each group chosen, where the job leaves that open. */
    Survey throughChosenLenses(Survey survey) {
        return job.settings().text(JobKey.LENS).filter(Chooser.AUTO::equals).isEmpty()
                ? survey
                : survey.through(this::throughChosenLens);
    }

    private GroupSurvey throughChosenLens(GroupSurvey survey) {
        LensChoice choice = LensChoice.of(survey, job.shop().lenses().values(), filling);
        Group group = choice.survey().group();
        String reach = choice.reached() == choice.needed()
                ? "the smallest field that reaches every slot (" + choice.needed() + ")"
                : "which reaches the most slots, " + choice.reached() + " of " + choice.needed();
        problems.add(new Problem(
                Severity.NOTE,
                job.settings().place(JobKey.LENS),
                0,
                "took " + group.lens().name() + " (" + group.describe() + "), " + reach,
                ""));
        return choice.survey();
    }

    Plan plan(Survey survey) {
        List<GroupSurvey> groups = inOrder(survey.groups());
        lookUpSlots(groups);
        Optional<Row> spare = new SpareRow(job, problems).read();
        int spares = 0;
        boolean filled = false;
        Planner planner = new Planner(job.section().platesBefore());
        Map<Group, Map<Placement, SlotState>> slots = new LinkedHashMap<>();
        for (GroupSurvey group : groups) {
            Map<Placement, SlotState> states = filling.states(group.slots());
            slots.put(group.group(), states);
            SlotNotes notes = new SlotNotes(group.group(), states);
            notes.tell(problems);
            OpenSlots open = filling.open(states, startsTheRun() && group == groups.get(0));
            if (open.isEmpty()) {
                notes.tellNoneOpen(problems);
            } else {
                List<Integer> rows = survey.rowsOfGroup().getOrDefault(group, List.of());
                Function<List<Seat>, List<Part>> parts = parts(group, open);
                List<List<Integer>> loads = loads(group.group(), rows, open);
                if (spare.isPresent() && rows.contains(spare.get().index())) {
                    SpareFill fill = new SpareFill(loads, open, job.items().size());
                    loads = fill.filled();
                    spares = fill.added();
                    filled = true;
                }
                planner.add(group.group(), loads, open, parts);
            }
        }
        if (spare.isPresent() && !filled) {
            new SpareRow(job, problems).tellNotMade(spare.get());
        }
        Items items = filled ? withSpares(spare.get(), spares) : job.items();
        return new Plan(planner.plates(), slots, survey.leftOut(), survey.sharing(), spoilage, items);
    }

    /** The items with so many more of a row, numbered after all others. */
    private Items withSpares(Row row, int spares) {
        if (spares == 0) {
            problems.note(
                    job.settings().place(JobKey.FILL_SPARES),
                    "the last plate of the group of line " + row.line() + " is full already",
                    "");
            return job.items();
        }
        int last = job.items().size();
        problems.note(
                job.settings().place(JobKey.FILL_SPARES),
                (spares == 1 ? "1 more piece" : spares + " more pieces") + " of line "
                        + row.line()
                        + (spares == 1 ? ", item " + (last + 1) : ", items " + (last + 1) + " to " + (last + spares))
                        + (spares == 1 ? ", fills" : ", fill") + " the last plate of the group",
                "");
        return job.items().with(List.of(new ExtraPieces(job.order().rows().size(), row.index(), spares)));
    }

    /** Tells of slots that the settings name and no jig has. */
    void checkSlots(Survey survey) {
        lookUpSlots(inOrder(survey.groups()));
    }

    private void lookUpSlots(List<GroupSurvey> groups) {
        if (!groups.isEmpty()) {
            fillings.lookUpSlots(
                    groups.stream().map(group -> group.group().jig()).toList(), startsTheRun());
        }
    }

    private boolean startsTheRun() {
        return job.section().platesBefore() == 0;
    }

    private Function<List<Seat>, List<Part>> parts(GroupSurvey group, OpenSlots open) {
        Optional<RoundPlan> round = group.roundPlan();
        if (round.isPresent()) {
            new BandNotes(round.get(), job.stands().overlap())
                    .tell(job.settings().place(JobKey.ROTARY), problems);
            return round.get()::parts;
        }
        PartPlan parts = new PartPlan(
                group.stations(),
                open.later().stream().map(slot -> slot.slot().id()).toList());
        if (!job.stands().front().equals(List.of(Stand.LOADED))) {
            new StationNotes(group.group(), parts).tell(job.settings().place(JobKey.JIG_STEPS), problems);
        }
        return parts::parts;
    }

    /** What the job asks to be worked in turn outranks the fewest change-overs. */
    private List<GroupSurvey> inOrder(List<GroupSurvey> surveys) {
        if (!job.settings().list(JobKey.ORDER_BY).isEmpty()) {
            return surveys;
        }
        Map<Group, GroupSurvey> byGroup = new LinkedHashMap<>();
        surveys.forEach(survey -> byGroup.put(survey.group(), survey));
        return ChangeOvers.fewest(List.copyOf(byGroup.keySet())).stream()
                .map(byGroup::get)
                .toList();
    }

    private List<List<Integer>> loads(Group group, List<Integer> rows, OpenSlots open) {
        if (together.isEmpty()) {
            return open.inTurn(items(rows));
        }
        PackedLots packed = LotPacking.pack(together.get().of(rows), open);
        tellPacked(group, packed);
        return packed.loads();
    }

    private List<Integer> items(List<Integer> rows) {
        List<Integer> items = new ArrayList<>();
        for (int row : rows) {
            job.items().ofRow(row).stream().map(Item::number).forEach(items::add);
        }
        return items;
    }

    private void tellPacked(Group group, PackedLots packed) {
        String column = "'" + job.order().headers().get(together.orElseThrow().column()) + "'";
        String plates = packed.loads().size() == 1 ? "1 plate" : packed.loads().size() + " plates";
        String least = packed.loads().size() == packed.bound()
                ? "proven to be the least"
                : "proven lower bound " + packed.bound();
        String split = packed.split() == 0 ? "" : "; values larger than a plate, and split: " + packed.split();
        problems.add(new Problem(
                Severity.NOTE,
                job.settings().place(JobKey.KEEP_TOGETHER),
                0,
                plates + " (" + group.describe() + ") with each value of " + column + " kept together, " + least
                        + split,
                ""));
    }
}
