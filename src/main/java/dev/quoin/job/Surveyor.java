package dev.quoin.job;

import dev.quoin.art.Artwork;
import dev.quoin.art.SharedSizes;
import dev.quoin.order.DoubtfulRows;
import dev.quoin.order.Item;
import dev.quoin.order.Row;
import dev.quoin.plate.Group;
import dev.quoin.plate.GroupSurvey;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Merges every row once, to find all that is wrong and how far the ink of each group reaches. The artwork is not kept: an
 * order may be larger than memory.
 */
final class Surveyor {
    private final LoadedJob job;
    private final Problems problems;
    private final Progress progress;
    private final Map<Group, GroupSurvey> groups = new LinkedHashMap<>();
    private final Map<GroupSurvey, List<Integer>> rowsOfGroup = new LinkedHashMap<>();
    private final CodeChecks codes;
    private final List<Integer> leftOut = new ArrayList<>();
    private final Sharing sharing = new Sharing();
    private final BitSet columnsUsed = new BitSet();

    Surveyor(LoadedJob job, Problems problems, Progress progress) {
        this.job = job;
        this.problems = problems;
        this.progress = progress;
        this.codes = new CodeChecks(job.shop());
    }

    Survey survey() throws IOException {
        BitSet badLines = linesWithErrors();
        List<Row> rows = new WorkingOrder(job, problems).rows();
        int done = 0;
        for (Row row : rows) {
            if (row.index() < job.section().firstRow()) {
                continue;
            }
            progress.report("checking", ++done, rows.size());
            boolean bad = badLines.get(row.line());
            if (!bad && !job.items().ofRow(row).isEmpty()) {
                bad = !take(row);
            }
            if (bad) {
                leftOut.add(row.index());
            }
        }
        leftOut.sort(null);
        new DoubtfulRows(job.order(), job.items()).tell(columnsUsed, problems);
        return new Survey(List.copyOf(groups.values()), rowsOfGroup, leftOut, sharing, codes);
    }

    /** Puts a row into its group; returns whether it has no errors. */
    private boolean take(Row row) throws IOException {
        Problems own = new Problems();
        Optional<Choice> choice = job.chooser().choose(row, own);
        if (choice.isPresent()) {
            List<List<Artwork>> artworks = merge(row, choice.get(), own);
            for (int i = 0; i < artworks.size() && !own.hasErrors(); i++) {
                place(row, choice.get(), artworks.get(i), own);
            }
            if (!own.hasErrors()) {
                rowsOfGroup
                        .computeIfAbsent(groups.get(choice.get().group()), made -> new ArrayList<>())
                        .add(row.index());
                artworks.forEach(sides -> share(choice.get(), sides));
            }
        }
        int item = job.items().ofRow(row).get(0).number();
        own.sorted().forEach(problem -> problems.add(isOf(row, problem) ? problem.inItem(item) : problem));
        return !own.hasErrors();
    }

    private void share(Choice choice, List<Artwork> sides) {
        for (int side = 0; side < sides.size(); side++) {
            sharing.take(choice.sides().get(side).template(), sides.get(side));
        }
    }

    /** The artwork, side by side, of each of a row's items that looks like no other of them. */
    private List<List<Artwork>> merge(Row row, Choice choice, Problems own) {
        List<List<Artwork>> artworks = new ArrayList<>();
        for (Item item : job.items().ofRow(row)) {
            List<Artwork> sides = new ArrayList<>();
            for (ChosenTemplate side : choice.sides()) {
                merge(item, choice, side, own).ifPresent(sides::add);
            }
            if (sides.size() < choice.sides().size()) {
                return artworks;
            }
            artworks.add(sides);
            if (sides.stream().noneMatch(artwork -> artwork.uses().ownToItem())) {
                return artworks;
            }
        }
        return artworks;
    }

    /** Of two sides, problems say on which they are. */
    private Optional<Artwork> merge(Item item, Choice choice, ChosenTemplate side, Problems own) {
        Problems found = new Problems();
        Optional<Artwork> artwork = side.template()
                .merge(item, job.order().place(item.row()), choice.group().recipe(), SharedSizes.none(), found);
        artwork.ifPresent(art -> columnsUsed.or(art.uses().columns()));
        boolean tells = choice.sides().size() > 1;
        found.sorted().forEach(one -> own.add(tells && isOf(item.row(), one) ? on(side, one) : one));
        return artwork;
    }

    private static Problem on(ChosenTemplate side, Problem problem) {
        return new Problem(
                problem.severity(),
                problem.place(),
                problem.item(),
                problem.message() + " (template " + side.name() + ")",
                problem.remedy());
    }

    private void place(Row row, Choice choice, List<Artwork> sides, Problems own) {
        GroupSurvey group = groups.computeIfAbsent(
                choice.group(),
                made -> new GroupSurvey(made, job.stands(), job.shop().machine()));
        int first = job.items().ofRow(row).get(0).number();
        sides.forEach(side -> codes.take(side, group, job.order().place(row), first));
        group.add(sides)
                .ifPresent(side -> own.error(
                        job.order().place(row),
                        "its ink stands out of every usable pocket of the jig "
                                + choice.group().jig().name() + " (template "
                                + choice.sides().get(side).name() + ")",
                        "use a smaller template or a jig with larger pockets"));
    }

    private boolean isOf(Row row, Problem problem) {
        return problem.place().file().equals(job.order().file())
                && problem.place().line() == row.line();
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
