package dev.quoin.store;

import dev.quoin.problem.Problems;
import dev.quoin.table.Table;
import dev.quoin.table.TableReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the record line by line, and tells whole lines from those cut short and those changed. */
final class LogReader {
    static final String HEADER = String.join(",", RunEvent.HEADER) + ",check";

    private final List<RunEvent> events = new ArrayList<>();
    private final List<Integer> cutShort = new ArrayList<>();
    private final List<Integer> damaged = new ArrayList<>();
    private String lastGood = LogChain.START;
    /** A line that does not follow the last good one, until the next tells why; 0 for none. */
    private int doubtful;

    private String doubtfulLine = "";

    private LogReader() {}

    static LogBook read(byte[] content) {
        LogReader reader = new LogReader();
        reader.take(new String(content, StandardCharsets.UTF_8));
        return new LogBook(reader.events, reader.cutShort, reader.damaged);
    }

    /** The check that the next line goes on from. */
    static String lastCheck(byte[] content) {
        LogReader reader = new LogReader();
        reader.take(new String(content, StandardCharsets.UTF_8));
        return reader.lastGood;
    }

    private void take(String text) {
        if (text.isEmpty()) {
            return;
        }
        String[] lines = text.split("\n", -1);
        int whole = lines.length - 1;
        for (int i = 0; i < whole; i++) {
            take(i + 1, lines[i]);
        }
        tail(whole + 1, lines[whole]);
    }

    private void take(int number, String line) {
        if (number == 1) {
            if (!line.equals(HEADER)) {
                (HEADER.startsWith(line) ? cutShort : damaged).add(number);
            }
        } else if (LogChain.follows(lastGood, line)) {
            settle(cutShort);
            good(number, line);
        } else if (doubtful > 0 && followsTheDoubtful(line)) {
            settle(damaged);
            good(number, line);
        } else {
            settle(damaged);
            doubtful = number;
            doubtfulLine = line;
        }
    }

    private boolean followsTheDoubtful(String line) {
        return LogChain.follows(LogChain.stated(doubtfulLine), line)
                || LogChain.follows(LogChain.computed(lastGood, doubtfulLine), line);
    }

    private void settle(List<Integer> as) {
        if (doubtful > 0) {
            as.add(doubtful);
            doubtful = 0;
        }
    }

    private void good(int number, String line) {
        lastGood = LogChain.stated(line);
        Optional<RunEvent> event = parse(line);
        event.ifPresentOrElse(events::add, () -> damaged.add(number));
    }

    /** What stands after the last line end: nothing, or what a kill left, unless only the line end itself was changed. */
    private void tail(int number, String line) {
        if (line.isEmpty()) {
            settle(damaged);
        } else if (number > 1 && LogChain.follows(lastGood, line)) {
            settle(cutShort);
            good(number, line);
        } else {
            settle(damaged);
            boolean onlyEndChanged = number > 1 && LogChain.follows(lastGood, line.substring(0, line.length() - 1));
            (onlyEndChanged ? damaged : cutShort).add(number);
        }
    }

    private static Optional<RunEvent> parse(String line) {
        byte[] table = (HEADER + "\n" + line + "\n").getBytes(StandardCharsets.UTF_8);
        Problems problems = new Problems();
        return TableReader.read(RunLog.FILE, table, Optional.of(','), problems)
                .filter(read -> !problems.hasErrors())
                .map(Table::rows)
                .filter(rows -> rows.size() == 1)
                .flatMap(rows -> RunEvent.of(rows.get(0).cells()));
    }
}
