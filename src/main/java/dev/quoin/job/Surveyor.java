package dev.quoin.job;

import dev.quoin.art.Artwork;
import dev.quoin.geometry.Decimals;
import dev.quoin.order.DoubtfulRows;
import dev.quoin.order.Row;
import dev.quoin.plate.Group;
import dev.quoin.plate.GroupSurvey;
import dev.quoin.plate.Overhang;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Merges every row once, to find all that is wrong and how far the ink of each group reaches. The artwork is not kept: an
 * order may be larger than memory.
 */
final class Surveyor {
    private static final int ROWS_A_PIECE = 50;

    private final LoadedJob job;
    private final Problems problems;
    private final Progress progress;
    private final Map<Group, GroupSurvey> groups = new LinkedHashMap<>();
    private final Map<GroupSurvey, List<Integer>> rowsOfGroup = new LinkedHashMap<>();
    private final CodeChecks codes;
    private final List<Integer> leftOut = new ArrayList<>();
    private final Sharing sharing = new Sharing();
    private final BitSet columnsUsed = new BitSet();
    private final BitSet columnsJoined = new BitSet();
    private int done;

    Surveyor(LoadedJob job, Problems problems, Progress progress) {
        this.job = job;
        this.problems = problems;
        this.progress = progress;
        this.codes = new CodeChecks(job.shop());
    }

    Survey survey() throws IOException {
        BitSet badLines = linesWithErrors();
        List<Row> rows = new WorkingOrder(job, problems).rows();
        try (InOrder inOrder = new InOrder(Threads.of(job.settings(), rows.size() / ROWS_A_PIECE))) {
            Iterator<Row> left = rows.iterator();
            inOrder.run(
                    () -> begin(left, badLines),
                    piece -> piece.stream().map(row -> row.merged(job.order())).toList(),
                    piece -> {
                        piece.forEach(this::take);
                        done += piece.size();
                        progress.report("checking", done, rows.size());
                    });
        }
        leftOut.sort(null);
        new DoubtfulRows(job.order(), job.items()).tell(columnsUsed, columnsJoined, problems);
        return new Survey(List.copyOf(groups.values()), rowsOfGroup, leftOut, sharing, codes);
    }

    /** The next rows, with what is chosen for them: what is wrong with a template is told by the first row that names it. */
    private Optional<List<SurveyedRow>> begin(Iterator<Row> left, BitSet badLines) throws IOException {
        List<SurveyedRow> piece = new ArrayList<>();
        while (left.hasNext() && piece.size() < ROWS_A_PIECE && !problems.tooMany()) {
            Row row = left.next();
            boolean earlier = row.index() < job.section().firstRow();
            if (!earlier && badLines.get(row.line())) {
                leftOut.add(row.index());
            } else if (!earlier && !job.items().ofRow(row).isEmpty()) {
                Problems own = new Problems();
                Optional<Choice> choice = job.chooser().choose(row, own);
                piece.add(SurveyedRow.begun(row, job.items().ofRow(row), choice, own));
            }
        }
        return piece.isEmpty() ? Optional.empty() : Optional.of(piece);
    }

    /** Puts a row into its group, unless it has errors. */
    private void take(SurveyedRow row) {
        columnsUsed.or(row.columns());
        columnsJoined.or(row.joined());
        for (int i = 0; i < row.artworks().size() && !row.own().hasErrors(); i++) {
            place(row, row.choice().orElseThrow(), row.artworks().get(i));
        }
        if (row.own().hasErrors()) {
            leftOut.add(row.row().index());
        } else {
            // A row may have no choice and no problem of its own: what is wrong with a template is told once.
            row.choice().ifPresent(choice -> addToGroup(row, choice));
        }
        row.tell(job.order(), problems);
    }

    private void addToGroup(SurveyedRow row, Choice choice) {
        rowsOfGroup
                .computeIfAbsent(groups.get(choice.group()), made -> new ArrayList<>())
                .add(row.row().index());
        row.artworks().forEach(sides -> share(choice, sides));
    }

    private void share(Choice choice, List<Artwork> sides) {
        for (int side = 0; side < sides.size(); side++) {
            sharing.take(choice.sides().get(side).template(), sides.get(side));
        }
    }

    private void place(SurveyedRow row, Choice choice, List<Artwork> sides) {
        GroupSurvey group = groups.computeIfAbsent(
                choice.group(),
                made -> new GroupSurvey(made, job.stands(), job.shop().machine()));
        Place place = job.order().place(row.row());
        sides.forEach(side -> codes.take(side, group, place, row.number()));
        group.add(sides)
                .ifPresent(out -> row.own()
                        .error(
                                place,
                                "its ink stands out of every usable pocket of the jig "
                                        + choice.group().jig().name()
                                        + out.least().map(Surveyor::told).orElse("") + " (template "
                                        + choice.sides().get(out.side()).name() + ")",
                                "use a smaller template or a jig with larger pockets"));
    }

    private static String told(Overhang least) {
        return ", by " + Decimals.mm(least.mm()) + " mm at the "
                + least.edge().name().toLowerCase(Locale.ROOT);
    }

    /** Rows that the table or their quantity already spoilt. */
    private BitSet linesWithErrors() {
        BitSet lines = new BitSet();
        problems.sorted().stream()
                .filter(problem -> problem.isError()
                        && problem.place().file().equals(job.order().file()))
                .forEach(problem -> lines.set(problem.place().line()));
        return lines;
    }
}
