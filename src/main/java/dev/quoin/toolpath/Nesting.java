package dev.quoin.toolpath;

import dev.quoin.geometry.Box;
import dev.quoin.geometry.Polyline;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Which outlines lie inside which. Pieces of rank 0 surround nothing; one that surrounds others has a rank above all of
 * theirs.
 */
final class Nesting {
    private static final int SAMPLES = 9;

    private final List<Outline> outlines = new ArrayList<>();
    private final double[] areas;
    private final Box[] boxes;

    private Nesting(List<Piece> pieces) {
        for (Piece piece : pieces) {
            if (piece instanceof Outline outline) {
                outlines.add(outline);
            }
        }
        areas = outlines.stream().mapToDouble(Nesting::area).toArray();
        boxes = outlines.stream().map(Nesting::box).toArray(Box[]::new);
    }

    /** Outlines in groups of one rank, the lowest first, in each in the given order. */
    static List<List<Piece>> ranks(List<Piece> outlines) {
        Nesting nesting = new Nesting(outlines);
        int[] ranks = nesting.ranks();
        List<List<Piece>> groups = new ArrayList<>();
        for (int i = 0; i <= Arrays.stream(ranks).max().orElse(-1); i++) {
            groups.add(new ArrayList<>());
        }
        for (int i = 0; i < ranks.length; i++) {
            groups.get(ranks[i]).add(outlines.get(i));
        }
        return groups;
    }

    private int[] ranks() {
        // Whatever lies inside an outline has the smaller area, so its rank is known first.
        Integer[] byArea = new Integer[outlines.size()];
        Arrays.setAll(byArea, i -> i);
        Arrays.sort(byArea, Comparator.comparingDouble(i -> areas[i]));
        int[] ranks = new int[byArea.length];
        for (int i = 0; i < byArea.length; i++) {
            for (int j = 0; j < i && outlines.get(byArea[i]).closed(); j++) {
                if (ranks[byArea[j]] >= ranks[byArea[i]] && surrounds(byArea[i], byArea[j])) {
                    ranks[byArea[i]] = ranks[byArea[j]] + 1;
                }
            }
        }
        return ranks;
    }

    /** Most points of the inner one are asked, since outlines may touch. */
    private boolean surrounds(int outer, int inner) {
        if (areas[inner] >= areas[outer] || !boxes[outer].contains(boxes[inner], 1e-6)) {
            return false;
        }
        Polyline line = outlines.get(inner).line();
        int samples = Math.min(SAMPLES, line.size());
        int inside = 0;
        for (int i = 0; i < samples; i++) {
            int p = i * line.size() / samples;
            if (Winding.number(outlines.get(outer).line(), line.x(p), line.y(p)) != 0) {
                inside++;
            }
        }
        return 2 * inside > samples;
    }

    /** An open one surrounds nothing. */
    private static double area(Outline outline) {
        return outline.closed() ? Math.abs(outline.line().signedArea()) : -1;
    }

    private static Box box(Outline outline) {
        Box box = Box.EMPTY;
        for (int i = 0; i < outline.line().size(); i++) {
            box = box.include(outline.line().x(i), outline.line().y(i));
        }
        return box;
    }
}
