package dev.quoin.job;

import dev.quoin.geometry.Decimals;
import dev.quoin.paper.PartView;
import dev.quoin.plate.FlipAxis;
import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.Part;
import dev.quoin.plate.Stand;
import dev.quoin.plate.WorkedPart;
import dev.quoin.plate.WorkedPlate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Lays the parts of a plate before its paper. */
final class PartViews {
    private PartViews() {}

    /**
     * Those of a plate.
     *
     * @param files of each part
     */
    static List<PartView> of(WorkedPlate worked, List<List<String>> files) {
        List<PartView> views = new ArrayList<>();
        Stand before = Stand.LOADED;
        for (WorkedPart part : worked.parts()) {
            List<Integer> items = part.items().stream().map(LoadedItem::item).toList();
            views.add(view(
                    part.part(),
                    files.get(views.size()),
                    before,
                    items,
                    part.time().total()));
            before = part.part().stand();
        }
        return views;
    }

    private static PartView view(Part part, List<String> files, Stand before, List<Integer> items, double seconds) {
        return view(part.number(), part.stand(), files, before, items, seconds);
    }

    static PartView view(
            int number, Stand stand, List<String> files, Stand before, List<Integer> items, double seconds) {
        return new PartView(number, files, toDo(before, stand), ranges(items), seconds);
    }

    /** What brings a jig from one stand to the next; nothing if it stands so. */
    static String toDo(Stand before, Stand now) {
        List<String> acts = new ArrayList<>();
        if (before.isBack() != now.isBack()) {
            acts.add("same pieces, turned over: turn the whole jig over, with the pieces in it, "
                    + now.flip().or(before::flip).map(PartViews::about).orElse(""));
        }
        double dx = now.dx() - before.dx();
        double dy = now.dy() - before.dy();
        if (dx != 0 || dy != 0) {
            String there = way(now.dx(), now.dy());
            acts.add("shift the jig by " + way(dx, dy) + ", to "
                    + (there.isEmpty() ? "where it is loaded" : there + " of where it is loaded"));
        }
        double turned = now.turn() - before.turn();
        if (turned != 0) {
            acts.add("turn the piece by " + Decimals.text(Math.abs(turned), 2) + " degrees "
                    + (turned > 0 ? "anticlockwise" : "clockwise")
                    + " as seen from the drawing's lower end, to " + Decimals.text(now.turn(), 2)
                    + " degrees from where the drawing's middle is on top");
        }
        String all = String.join("; then ", acts);
        return all.isEmpty() ? "" : Character.toUpperCase(all.charAt(0)) + all.substring(1);
    }

    private static String about(FlipAxis axis) {
        return axis == FlipAxis.Y
                ? "left to right, about the line through its centre that points away from you"
                : "top to bottom, about the line through its centre from left to right";
    }

    /** {@code 60 mm to the right and 20 mm to the far side}; empty for no way. */
    private static String way(double dx, double dy) {
        return Stream.of(way(dx, "to the right", "to the left"), way(dy, "to the far side", "to the near side"))
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(" and "));
    }

    private static String way(double distance, String forwards, String backwards) {
        return distance == 0 ? "" : Decimals.mm(Math.abs(distance)) + " mm " + (distance > 0 ? forwards : backwards);
    }

    /** {@code 1-4, 9}. */
    static String ranges(List<Integer> items) {
        List<int[]> ranges = new ArrayList<>();
        for (int item : items.stream().sorted().toList()) {
            int[] last = ranges.isEmpty() ? new int[] {0, -1} : ranges.get(ranges.size() - 1);
            if (last[1] == item - 1) {
                last[1] = item;
            } else {
                ranges.add(new int[] {item, item});
            }
        }
        return ranges.stream()
                .map(range -> range[0] == range[1] ? "" + range[0] : range[0] + "-" + range[1])
                .collect(Collectors.joining(", "));
    }
}
