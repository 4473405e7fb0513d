package dev.quoin.job;

import dev.quoin.geometry.Decimals;
import dev.quoin.order.Item;
import dev.quoin.plate.Placement;
import dev.quoin.table.TableWriter;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** {@code items.csv}: a line for each item on a plate and each part in which it is marked, by number, with the order's columns as they are. */
final class ItemsCsv {
    static final List<String> COLUMNS = List.of(
            "item",
            "row",
            "copy",
            "plate",
            "part",
            "slot",
            "x_mm",
            "y_mm",
            "rotation_deg",
            "template",
            "recipe",
            "seconds");

    private final LoadedJob job;
    private final ItemMerge merge;

    ItemsCsv(LoadedJob job, ItemMerge merge) {
        this.job = job;
        this.merge = merge;
    }

    void write(Appendable out, ItemTimes times) throws IOException {
        TableWriter table = new TableWriter(out);
        List<String> header = new ArrayList<>(COLUMNS);
        header.addAll(columns(job.order().headers()));
        table.row(header);
        for (Item item : job.items()) {
            for (ItemTime time : times.of(item.number())) {
                table.row(row(item, time));
            }
        }
    }

    /** What the order's columns are called here. */
    static List<String> columns(List<String> headers) {
        return headers.stream().map(name -> free(name, headers)).toList();
    }

    /** A column's name with {@code order.} before it, if it is one of ours; again, if that is a column too. */
    private static String free(String name, List<String> all) {
        Set<String> taken = all.stream().map(String::strip).collect(Collectors.toSet());
        taken.remove(name.strip());
        taken.addAll(COLUMNS);
        String free = name;
        while (taken.contains(free.strip())) {
            free = "order." + free;
        }
        return free;
    }

    private List<String> row(Item item, ItemTime time) throws IOException {
        Choice choice = merge.choice(item.row());
        Placement placement = time.seat().placement();
        List<String> row = new ArrayList<>(List.of(
                Integer.toString(item.number()),
                Integer.toString(item.row().line()),
                Integer.toString(item.copy()),
                Integer.toString(time.plate()),
                Integer.toString(time.part().number()),
                placement.slot().id(),
                Decimals.mm(placement.centre().x()),
                Decimals.mm(placement.centre().y()),
                Decimals.mm(placement.rotation()),
                choice.side(time.part().stand()).name(),
                choice.group().recipe().name(),
                Decimals.seconds(time.seconds())));
        row.addAll(item.row().cells());
        return row;
    }
}
