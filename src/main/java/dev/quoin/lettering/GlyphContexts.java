package dev.quoin.lettering;

import java.nio.ByteBuffer;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Knows where a rule of the font may begin that looks at more than two glyphs, so that pairs do not tell how text is set
 * (ISO/IEC 14496-22, clauses 6.2 to 6.4: common layout tables, GPOS, GSUB, GDEF). Where it cannot tell, it says that one
 * may. All lookups are taken as if they were on.
 */
final class GlyphContexts {
    private static final int LIGATURE_CLASS = 2;

    private final BitSet glyphs;
    private final BitSet beginnings = new BitSet();
    private final Set<List<Integer>> pairs = new HashSet<>();

    /**
     * Of a font, for text that is made of these glyphs only.
     *
     * @param tables GSUB, GPOS and GDEF, where the font has them
     * @throws IndexOutOfBoundsException if the tables are not sound
     */
    GlyphContexts(BitSet glyphs, Map<String, ByteBuffer> tables) {
        this.glyphs = glyphs;
        if (tables.containsKey("GDEF")) {
            takeSkipped(new LayoutTable(tables.get("GDEF"), 0));
        }
        if (tables.containsKey("GSUB")) {
            takeLookups(new LayoutTable(tables.get("GSUB"), 0), 7, this::takeSubstitution);
        }
        if (tables.containsKey("GPOS")) {
            takeLookups(new LayoutTable(tables.get("GPOS"), 0), 9, this::takePositioning);
        }
    }

    /** Whether such a rule may begin at a glyph. */
    boolean mayBeginAt(int glyph) {
        return beginnings.get(glyph);
    }

    /** Whether such a rule may begin with two glyphs that follow each other. */
    boolean mayBeginWith(int first, int second) {
        return pairs.contains(List.of(first, second));
    }

    /** Marks and ligatures: rules can be told to pass over them, and then their neighbours become a pair. */
    private void takeSkipped(LayoutTable definitions) {
        if (definitions.number(4) != 0) {
            definitions.at(4).byClass(glyphs).forEach((kind, members) -> {
                if (kind >= LIGATURE_CLASS) {
                    beginnings.or(members);
                }
            });
        }
    }

    private void takeLookups(LayoutTable table, int extension, Rules rules) {
        LayoutTable lookups = table.at(8);
        for (int i = 0; i < lookups.number(0); i++) {
            LayoutTable lookup = lookups.at(2 + 2 * i);
            for (int j = 0; j < lookup.number(4); j++) {
                LayoutTable rule = lookup.at(6 + 2 * j);
                int type = lookup.number(0);
                if (type == extension) {
                    rules.take(rule.number(2), rule.farAt(4));
                } else {
                    rules.take(type, rule);
                }
            }
        }
    }

    private void takeSubstitution(int type, LayoutTable rule) {
        switch (type) {
            case 4 -> takeLigatures(rule);
            case 5 -> takeContext(rule, false);
            case 6 -> takeContext(rule, true);
            case 8 -> add(rule.at(2).coverage());
            default -> {
                // One glyph for another: seen in the pair.
            }
        }
    }

    private void takePositioning(int type, LayoutTable rule) {
        boolean movesSecond = type == 2 && rule.number(6) != 0;
        if (type == 1 || type == 3 || movesSecond) {
            add(rule.at(2).coverage());
        } else if (type == 7 || type == 8) {
            takeContext(rule, type == 8);
        }
    }

    /** A ligature of three or more begins with a pair that then does not tell all. */
    private void takeLigatures(LayoutTable rule) {
        int[] firsts = rule.at(2).coverage().stream().toArray();
        for (int i = 0; i < Math.min(firsts.length, rule.number(4)); i++) {
            LayoutTable set = rule.at(6 + 2 * i);
            for (int j = 0; j < set.number(0); j++) {
                LayoutTable ligature = set.at(2 + 2 * j);
                if (ligature.number(2) > 2) {
                    pairs.add(List.of(firsts[i], ligature.number(4)));
                }
            }
        }
    }

    /** Rules that look at more than two glyphs, all of them among these. */
    private void takeContext(LayoutTable rule, boolean chained) {
        if (rule.number(0) == 3) {
            takeCoverages(rule, chained);
        } else {
            takeSequences(rule, chained);
        }
    }

    /** Rules spelt out as glyphs (format 1) or as classes of glyphs (format 2), in sets by their first glyph. */
    private void takeSequences(LayoutTable rule, boolean chained) {
        boolean byClass = rule.number(0) == 2;
        int input = chained ? 6 : 4;
        SequenceMatch match = byClass
                ? new SequenceMatch(
                        classes(rule, 4), classes(rule, input), chained ? classes(rule, 8) : new BitSet(), chained)
                : new SequenceMatch(glyphs, glyphs, glyphs, chained);
        int sets = byClass ? (chained ? 10 : 6) : 4;
        BitSet covered = rule.at(2).coverage();
        int[] firsts = covered.stream().toArray();
        covered.and(glyphs);
        Map<Integer, BitSet> firstsByClass = byClass ? glyphsByClass(rule, input, covered) : Map.of();
        for (int i = 0; i < rule.number(sets); i++) {
            int at = sets + 2 + 2 * i;
            if (rule.number(at) == 0 || !match.anyOf(rule.at(at))) {
                continue;
            }
            if (byClass) {
                beginnings.or(firstsByClass.getOrDefault(i, new BitSet()));
            } else {
                add(firsts[i]);
            }
        }
    }

    /** These glyphs by the class definition whose offset stands there; without one, all are of class 0. */
    private static Map<Integer, BitSet> glyphsByClass(LayoutTable rule, int offset, BitSet glyphs) {
        return rule.number(offset) == 0 ? Map.of(0, glyphs) : rule.at(offset).byClass(glyphs);
    }

    /** The classes that occur among the glyphs. */
    private BitSet classes(LayoutTable rule, int offset) {
        BitSet classes = new BitSet();
        glyphsByClass(rule, offset, glyphs).keySet().forEach(classes::set);
        return classes;
    }

    /** A rule spelt out as a coverage for each glyph (format 3). */
    private void takeCoverages(LayoutTable rule, boolean chained) {
        int before = chained ? rule.number(2) : 0;
        int at = chained ? 4 + 2 * before : 6;
        int inputs = rule.number(chained ? at : 2);
        int first = chained ? at + 2 : at;
        int after = chained ? rule.number(first + 2 * inputs) : 0;
        boolean met = before + inputs + after > 2
                && meets(rule, 4, before)
                && meets(rule, first, inputs)
                && meets(rule, first + 2 * inputs + 2, after);
        if (met) {
            add(rule.at(first).coverage());
        }
    }

    private boolean meets(LayoutTable rule, int offset, int count) {
        for (int i = 0; i < count; i++) {
            if (!rule.at(offset + 2 * i).coverage().intersects(glyphs)) {
                return false;
            }
        }
        return true;
    }

    private void add(BitSet more) {
        more.stream().forEach(this::add);
    }

    private void add(int glyph) {
        if (glyphs.get(glyph)) {
            beginnings.set(glyph);
        }
    }

    /** Looks at a rule of a type. */
    private interface Rules {
        void take(int type, LayoutTable rule);
    }
}
