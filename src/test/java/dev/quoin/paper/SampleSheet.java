package dev.quoin.paper;

import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Point;
import dev.quoin.optics.Exposure;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problem;
import dev.quoin.shop.Blank;
import dev.quoin.shop.EdgePass;
import dev.quoin.shop.Lens;
import dev.quoin.shop.Material;
import dev.quoin.shop.Method;
import dev.quoin.shop.Pattern;
import dev.quoin.shop.Step;
import dev.quoin.toolpath.Tally;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Small made-up sheets for tests and benchmarks; numbers of items start high, so that no other figure looks like one. */
public final class SampleSheet {
    public static final int FIRST_ITEM = 7001;
    static final Path ROUND = Path.of(new java.awt.geom.Ellipse2D.Double(-13, -13, 26, 26));
    static final Path OBLONG = Path.of(Box.centred(30, 14));

    private SampleSheet() {}

    static GroupView group(String recipe, String jig) {
        Blank blank = new Blank("steel-round-25", "stainless steel", 25, 25, 1.5, "silver", "");
        Lens lens = new Lens("wide", 150, 210, 246.5, 3, "");
        return new GroupView("", recipe, blank, lens, false, 248, jig, 1, 3, List.of(), exposures());
    }

    static List<ExposureView> exposures() {
        Exposure engraved = new Exposure(
                0.0412,
                2.34,
                8,
                0.000178,
                890,
                26.7,
                0.02,
                0.514,
                0.0089,
                OptionalDouble.of(0.03),
                OptionalDouble.of(0.222));
        return List.of(new ExposureView(steps().get(0).step(), engraved));
    }

    static List<StepView> steps() {
        Step engrave = new Step(
                1, "engrave", Method.FILL, 40, 900, 45, 200, 0.04, 30, 15, Pattern.LINES, 2, 0, EdgePass.NONE, "");
        Step cut = new Step(
                2, "cut", Method.FOLLOW, 90, 300, 30, 200, 0, 0, 0, Pattern.LINES, 12, 0, EdgePass.NONE, "last");
        return List.of(
                new StepView(
                        engrave, new Tally(40_000, 3_000, 900, 880, 0, 50.5, 4.25, 6.4845), 12.5, "black", "#000000"),
                new StepView(cut, new Tally(9_000, 400, 36, 36, 12_960, 30, 0.3, 0.2), 0, "orange", "#e69f00"));
    }

    static SlotView filled(String id, double x, double y, double turn, Path pocket, int item, String... text) {
        return new SlotView(id, new Point(x, y), turn, pocket, SlotState.FILLED, item, item - 6999, List.of(text));
    }

    static SlotView unfilled(String id, double x, double y, Path pocket, SlotState state) {
        return new SlotView(id, new Point(x, y), 0, pocket, state, 0, 0, List.of());
    }

    static PlateView plate(int number, List<Change> changes, List<SlotView> slots) {
        int items = (int) slots.stream().filter(SlotView::filled).count();
        return new PlateView(
                number,
                List.of(String.format("plate-%03d.svg", number)),
                group("steel-deep", "tray-20"),
                changes,
                items,
                91.7345,
                30,
                121.7345,
                changes.isEmpty() ? 0 : 600,
                steps(),
                slots,
                Optional.empty(),
                List.of());
    }

    /** A tray of 5 by 4 round pockets; texts are laid in from {@code texts} in turn, two lines each. */
    public static PlateView tray(int number, int firstItem, List<String> texts) {
        List<SlotView> slots = new ArrayList<>();
        int item = firstItem;
        for (int i = 0; i < 20; i++) {
            String id = "" + (char) ('A' + i / 5) + (i % 5 + 1);
            double x = (i % 5 - 2) * 28;
            double y = (1.5 - i / 5) * 28;
            if (i == 4) {
                slots.add(unfilled(id, x, y, ROUND, SlotState.UNUSABLE));
            } else if (i == 9) {
                slots.add(unfilled(id, x, y, ROUND, SlotState.OUT_OF_REACH));
            } else if (i == 19) {
                slots.add(unfilled(id, x, y, ROUND, SlotState.EMPTY));
            } else {
                slots.add(filled(id, x, y, 0, ROUND, item, texts.get(item % texts.size()), "5 March 2026"));
                item++;
            }
        }
        List<Change> changes = number == 2
                ? List.of(
                        new Change(Change.What.LENS, "wide", "narrow"),
                        new Change(Change.What.RECIPE, "steel-deep", "brass-fine"))
                : List.of();
        return plate(number, changes, slots);
    }

    static ReprintView reprint() {
        PlateView plate = tray(1, FIRST_ITEM, List.of("Ada Marsh"));
        return new ReprintView(
                "harbour",
                1,
                "7001-7017",
                "1",
                "slipped",
                List.of("Only step 2 (cut) is repeated."),
                plate,
                "4",
                List.of(new Material(
                        "stainless steel", "hexavalent chromium and nickel", "run extraction", "made up")));
    }

    public static SheetHead head(String run, List<PlateView> plates, List<Problem> problems, List<LeftOut> leftOut) {
        List<PlateLine> index = new ArrayList<>();
        double ends = 600;
        for (PlateView plate : plates) {
            ends += plate.totalSeconds() + plate.setupSeconds();
            index.add(new PlateLine(
                    plate.number(), plate.files(), plate.items(), plate.changes(), plate.totalSeconds(), ends));
        }
        int items = plates.stream().mapToInt(PlateView::items).sum();
        return new SheetHead(
                run,
                Optional.of("2026-03-05"),
                "order.csv",
                plates.size(),
                items,
                ends,
                600,
                List.of(new BlankCount("steel-round-25", "stainless steel", items, 1)),
                List.of(group("steel-deep", "tray-20")),
                problems,
                leftOut,
                "4",
                List.of(new Material("stainless steel", "hexavalent chromium and nickel", "run extraction", "made up")),
                index);
    }

    static List<Problem> problems() {
        return List.of(
                Problem.note(Place.of("order.csv", 9).at(4), "Quantity: 0", "no item is made"),
                Problem.warning(Place.of("tag.svg", 12), "class 'engrav' is no process", "did you mean 'engrave'?"),
                Problem.error(Place.of("order.csv", 14).at(3), "Name: too long for its box", "shorten it"));
    }

    static String html(SheetHead head, List<PlateView> plates) {
        StringWriter out = new StringWriter();
        RunSheetWriter sheet = new RunSheetWriter();
        try {
            sheet.head(out, head);
            for (PlateView plate : plates) {
                sheet.plate(out, plate);
            }
            sheet.foot(out, new SheetFoot(List.of()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
    }
}
