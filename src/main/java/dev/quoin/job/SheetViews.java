package dev.quoin.job;

import dev.quoin.art.MarkedText;
import dev.quoin.optics.Exposure;
import dev.quoin.order.Item;
import dev.quoin.order.Row;
import dev.quoin.paper.BlankCount;
import dev.quoin.paper.ExposureView;
import dev.quoin.paper.GroupView;
import dev.quoin.paper.LeftOut;
import dev.quoin.paper.PlateView;
import dev.quoin.paper.ScanCode;
import dev.quoin.paper.SheetHead;
import dev.quoin.paper.SlotState;
import dev.quoin.paper.SlotView;
import dev.quoin.paper.StepView;
import dev.quoin.plate.FieldPose;
import dev.quoin.plate.Group;
import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.Placement;
import dev.quoin.plate.Plate;
import dev.quoin.plate.StepColour;
import dev.quoin.plate.StepTime;
import dev.quoin.plate.WorkedPart;
import dev.quoin.plate.WorkedPlate;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Blank;
import dev.quoin.shop.Cylinder;
import dev.quoin.shop.Material;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Lays what was planned and worked out before the papers, which work nothing out themselves. */
final class SheetViews {
    /** Stands on papers where a job names no blank. */
    static final Blank UNNAMED = new Blank("(not named)", "", 0, 0, 0, "", "");

    private final LoadedJob job;
    private final Plan plan;
    private final GroupNotes notes;
    private final Map<Group, GroupView> groups = new IdentityHashMap<>();

    SheetViews(LoadedJob job, Plan plan) {
        this.job = job;
        this.plan = plan;
        this.notes = new GroupNotes(job.settings().flag(JobKey.HATCHED));
        Map<Group, List<Plate>> plates = new IdentityHashMap<>();
        plan.plates()
                .forEach(plate -> plates.computeIfAbsent(plate.group(), made -> new ArrayList<>())
                        .add(plate));
        plates.forEach((group, own) -> groups.put(group, view(group, own)));
    }

    SheetHead head(RunTotals totals, Problems problems) {
        return new SheetHead(
                job.settings().name(),
                job.settings().text(JobKey.DATE),
                job.order().file(),
                plan.plates().size(),
                plan.plates().stream().mapToInt(plate -> plate.seats().size()).sum(),
                totals.seconds(),
                totals.setup(),
                blanks(totals),
                groups(),
                besidesLeftOut(problems.sorted()),
                leftOut(problems.sorted()),
                job.shop().machine().laserClass(),
                materials(),
                totals.lines());
    }

    /**
     * A plate; safe for use by several threads.
     *
     * @param files as the sheet names them
     * @param names of the files of each part
     */
    PlateView plate(WorkedPlate worked, SetUp setUp, List<String> files, List<List<String>> names) {
        Plate plate = worked.plate();
        return new PlateView(
                plate.number(),
                files,
                groups.get(plate.group()),
                setUp.changes(),
                plate.seats().size(),
                worked.tally().seconds(),
                worked.handling(),
                worked.total(),
                setUp.seconds(),
                worked.steps().stream().map(SheetViews::step).toList(),
                slots(worked),
                ScanCode.of(job.settings().name() + "/"
                        + FileNames.plate(
                                plate.number(),
                                job.section().platesBefore() + plan.plates().size())),
                PartsCsv.isNeeded(List.of(plate)) ? PartViews.of(worked, names) : List.of());
    }

    static StepView step(StepTime time) {
        StepColour colour = StepColour.of(time.step().number());
        return new StepView(time.step(), time.tally(), time.saved(), colour.title(), colour.hex());
    }

    private List<SlotView> slots(WorkedPlate worked) {
        Plate plate = worked.plate();
        Map<Integer, List<String>> texts = texts(worked);
        Map<Placement, Integer> filled = new HashMap<>();
        plate.seats().forEach(seat -> filled.put(seat.placement(), seat.item()));
        List<SlotView> slots = new ArrayList<>();
        plan.slots().get(plate.group()).forEach((placement, state) -> {
            Optional<Integer> item = Optional.ofNullable(filled.get(placement));
            Placement seen = FieldPose.seen(placement, job.shop().machine());
            slots.add(new SlotView(
                    placement.slot().id(),
                    seen.centre(),
                    seen.rotation(),
                    placement.slot().pocket(),
                    item.isPresent() ? SlotState.FILLED : state(state),
                    item.orElse(0),
                    item.map(one -> row(one).line()).orElse(0),
                    item.map(texts::get).orElse(List.of())));
        });
        return slots;
    }

    private static SlotState state(dev.quoin.plate.SlotState state) {
        return switch (state) {
            case OPEN, SKIPPED -> SlotState.EMPTY;
            case UNUSABLE, TOO_SMALL -> SlotState.UNUSABLE;
            case OUT_OF_REACH -> SlotState.OUT_OF_REACH;
        };
    }

    /** What is marked on each item over all parts, by its number; what stands on the back is said to. */
    private static Map<Integer, List<String>> texts(WorkedPlate worked) {
        Map<Integer, List<String>> texts = new HashMap<>();
        Set<String> told = new HashSet<>();
        for (WorkedPart part : worked.parts()) {
            boolean back = part.part().stand().isBack();
            for (LoadedItem item : part.items()) {
                List<String> known = texts.computeIfAbsent(item.item(), made -> new ArrayList<>());
                // A round piece shows the same texts in each of its parts.
                if (told.add(item.item() + " " + back)) {
                    texts(item).stream()
                            .map(text -> back ? "back: " + text : text)
                            .forEach(known::add);
                }
            }
        }
        return texts;
    }

    private static List<String> texts(LoadedItem item) {
        return item.texts().stream()
                .map(MarkedText::text)
                .flatMap(String::lines)
                .filter(line -> !line.isBlank())
                .toList();
    }

    private Row row(int item) {
        return job.items().numbered(item).row();
    }

    private List<GroupView> groups() {
        return plan.plates().stream()
                .map(Plate::group)
                .distinct()
                .map(groups::get)
                .toList();
    }

    private GroupView view(Group group, List<Plate> own) {
        Blank blank = group.blank().orElse(UNNAMED);
        return new GroupView(
                String.join(", ", group.values()),
                group.recipe().name(),
                blank,
                group.lens(),
                group.jig().round().isPresent(),
                group.lens().focusDistance() + (group.jig().round().isPresent() ? 0 : blank.thickness()),
                Cylinder.title(group.jig().name()),
                own.size(),
                own.stream().mapToInt(plate -> plate.seats().size()).sum(),
                notes.of(group),
                exposures(group));
    }

    private List<ExposureView> exposures(Group group) {
        return group.recipe().steps().stream()
                .map(step -> new ExposureView(step, Exposure.of(job.shop().machine(), group.lens(), step)))
                .toList();
    }

    private static List<BlankCount> blanks(RunTotals totals) {
        List<BlankCount> counts = new ArrayList<>();
        totals.blanks().forEach((blank, count) -> {
            String name = blank.map(Blank::name).orElse("blank " + UNNAMED.name());
            String material = blank.map(Blank::material).orElse("");
            counts.add(new BlankCount(name, material, count, totals.spares(count)));
        });
        return counts;
    }

    private List<Material> materials() {
        return plan.plates().stream()
                .map(plate -> plate.group().blank())
                .flatMap(Optional::stream)
                .map(blank -> job.shop().material(blank))
                .distinct()
                .toList();
    }

    /** Rows that are left out are named with their errors, so these need not be told twice. */
    private List<Problem> besidesLeftOut(List<Problem> problems) {
        return problems.stream().filter(problem -> !problem.isError()).toList();
    }

    private List<LeftOut> leftOut(List<Problem> problems) {
        Map<Integer, String> reasons = new LinkedHashMap<>();
        for (Problem problem : problems) {
            if (problem.isError()) {
                reasons.merge(problem.place().line(), problem.message(), (a, b) -> a + "; " + b);
            }
        }
        return plan.leftOut().stream()
                .map(index -> job.order().rows().get(index))
                .map(row -> new LeftOut(row.line(), numbers(row), reasons.getOrDefault(row.line(), "")))
                .toList();
    }

    /** {@code 7}, or {@code 12-14}. */
    private String numbers(Row row) {
        List<Integer> numbers =
                job.items().ofRow(row).stream().map(Item::number).collect(Collectors.toList());
        if (numbers.isEmpty()) {
            return "";
        }
        int last = numbers.get(numbers.size() - 1);
        return numbers.size() == 1 ? Integer.toString(last) : numbers.get(0) + "-" + last;
    }
}
