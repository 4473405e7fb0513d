package dev.quoin.job;

import dev.quoin.order.Row;
import dev.quoin.problem.Problems;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;

/** The order in which rows are worked: by the columns of {@code --order-by}, then as they stand in the file. */
final class WorkingOrder {
    private final LoadedJob job;
    private final List<Integer> columns = new ArrayList<>();

    WorkingOrder(LoadedJob job, Problems problems) {
        this.job = job;
        for (String name : job.settings().list(JobKey.ORDER_BY)) {
            OptionalInt column =
                    Role.column(job.order(), name, job.settings().place(JobKey.ORDER_BY), JobKey.ORDER_BY, problems);
            column.ifPresent(columns::add);
        }
    }

    List<Row> rows() {
        List<Row> rows = job.order().rows();
        if (columns.isEmpty()) {
            return rows;
        }
        Comparator<Row> order = Comparator.comparingInt(row -> 0);
        for (int column : columns) {
            order = order.thenComparing(row -> row.cells().get(column).strip(), WorkingOrder::compare);
        }
        return rows.stream().sorted(order.thenComparingInt(Row::index)).toList();
    }

    /** Numbers by size and before texts; texts by their characters, so that dates as 2026-03-05 come in their order. */
    private static int compare(String a, String b) {
        boolean numberA = a.matches("-?\\d{1,15}(\\.\\d+)?");
        boolean numberB = b.matches("-?\\d{1,15}(\\.\\d+)?");
        if (numberA && numberB) {
            return Double.compare(Double.parseDouble(a), Double.parseDouble(b));
        }
        return numberA == numberB ? a.compareTo(b) : Boolean.compare(numberB, numberA);
    }
}
