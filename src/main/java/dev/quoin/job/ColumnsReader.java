package dev.quoin.job;

import dev.quoin.art.Columns;
import dev.quoin.art.DateForm;
import dev.quoin.art.Serial;
import dev.quoin.order.Items;
import dev.quoin.order.Order;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** Reads what the settings say of the order's columns: which hold dates; and of serial numbers. */
final class ColumnsReader {
    private static final List<JobKey> SERIAL =
            List.of(JobKey.SERIAL_START, JobKey.SERIAL_STEP, JobKey.SERIAL_WIDTH, JobKey.SERIAL_PREFIX);
    private static final long MOST_START = 1_000_000_000_000_000L;
    private static final long MOST_STEP = 1_000_000;
    private static final int MOST_WIDTH = 18;

    private final JobSettings settings;
    private final Order order;
    private final Problems problems;

    ColumnsReader(JobSettings settings, Order order, Problems problems) {
        this.settings = settings;
        this.order = order;
        this.problems = problems;
    }

    /**
     * The columns.
     *
     * @param locale whose names of months dates are typed with
     */
    Columns read(Items items, Locale locale) {
        return new Columns(order.headers(), order.variables(), dates(locale), serial(items));
    }

    /** {@code Since=d/M/yyyy; Born=MMMM d, yyyy}. */
    private Map<Integer, DateForm> dates(Locale locale) {
        Map<Integer, DateForm> dates = new HashMap<>();
        Stream.of(settings.text(JobKey.DATE_FORMAT).orElse("").split(";"))
                .filter(part -> !part.isBlank())
                .forEach(part -> date(part.strip(), locale, dates));
        return dates;
    }

    private void date(String part, Locale locale, Map<Integer, DateForm> dates) {
        Place place = settings.place(JobKey.DATE_FORMAT);
        int equals = part.indexOf('=');
        if (equals < 0) {
            problems.error(
                    place, "date-format: '" + part + "' names no column", "write COLUMN=FORM, such as Since=d/M/yyyy");
            return;
        }
        String pattern = part.substring(equals + 1).strip();
        OptionalInt column = Role.column(order, part.substring(0, equals).strip(), place, JobKey.DATE_FORMAT, problems);
        Optional<DateForm> form = DateForm.of(pattern, locale);
        if (form.isEmpty()) {
            problems.error(
                    place,
                    "date-format: '" + pattern + "' is no form of a date",
                    "write d for the day, M for the month and yyyy for the year, such as d/M/yyyy or d MMMM yyyy");
        } else if (column.isPresent() && dates.put(column.getAsInt(), form.get()) != null) {
            problems.error(place, "date-format: two forms for one column, in '" + part + "'", "leave one");
        }
    }

    private Optional<Serial> serial(Items items) {
        if (SERIAL.stream().allMatch(key -> settings.text(key).isEmpty())) {
            return Optional.empty();
        }
        int before = problems.errors();
        int column = order.variables().indexOf("serial");
        if (column >= 0) {
            problems.error(
                    order.headerPlace(column),
                    "the order has a column '" + order.headers().get(column)
                            + "', and the job's settings number items in series",
                    "rename the column, or leave the --serial options out");
        }
        long step = number(JobKey.SERIAL_STEP, 1, -MOST_STEP, MOST_STEP);
        long width = number(JobKey.SERIAL_WIDTH, 1, 1, MOST_WIDTH);
        Serial serial = new Serial(
                number(JobKey.SERIAL_START, 1, 0, MOST_START),
                step,
                (int) width,
                settings.text(JobKey.SERIAL_PREFIX).orElse(""));
        if (problems.errors() == before) {
            check(serial, items);
        }
        return Optional.of(serial);
    }

    private void check(Serial serial, Items items) {
        if (serial.step() == 0) {
            problems.error(
                    settings.place(JobKey.SERIAL_STEP),
                    "serial-step: 0 would give every piece the same number",
                    "give another number, or none for 1");
        }
        long last = serial.number(Math.max(1, items.size()));
        String told = items.size() + " pieces end with " + last;
        if (last < 0) {
            problems.error(
                    settings.place(JobKey.SERIAL_START), "serial-start: " + told, "start higher or use smaller steps");
        }
        boolean hasWidth = settings.text(JobKey.SERIAL_WIDTH).isPresent();
        long most = Math.max(last, serial.start());
        if (hasWidth && last >= 0 && Long.toString(most).length() > serial.width()) {
            problems.error(
                    settings.place(JobKey.SERIAL_WIDTH),
                    "serial-width: " + most + " has more than " + serial.width() + " digits",
                    "give a larger --serial-width");
        }
    }

    /** A whole number in a range; what is given if nothing is set. */
    private long number(JobKey key, long otherwise, long least, long most) {
        Optional<String> text = settings.text(key);
        if (text.isEmpty()) {
            return otherwise;
        }
        if (text.get().matches("-?[0-9]{1,16}")) {
            long number = Long.parseLong(text.get());
            if (number >= least && number <= most) {
                return number;
            }
        }
        problems.error(
                settings.place(key),
                key.option() + ": '" + text.get() + "' does not do",
                "write a whole number from " + least + " to " + most);
        return otherwise;
    }
}
