package dev.quoin.lettering;

import java.util.BitSet;

/**
 * Tells whether a text of certain glyphs can meet a font's rule about more than two glyphs (ISO/IEC 14496-22, clause 6.2:
 * sequence context, chained sequence context). The numbers are glyphs or classes of them, as the rule has it.
 *
 * @param before the numbers that the text can have before what the rule changes
 * @param inside the same in what it changes
 * @param after the same after it
 * @param chained whether rules look at more than what they change
 */
record SequenceMatch(BitSet before, BitSet inside, BitSet after, boolean chained) {
    boolean anyOf(LayoutTable set) {
        for (int i = 0; i < set.number(0); i++) {
            LayoutTable rule = set.at(2 + 2 * i);
            if (chained ? chain(rule) : sequence(rule)) {
                return true;
            }
        }
        return false;
    }

    private boolean sequence(LayoutTable rule) {
        int count = rule.number(0);
        return count > 2 && all(rule, 4, count - 1, inside);
    }

    private boolean chain(LayoutTable rule) {
        int backs = rule.number(0);
        int at = 2 + 2 * backs;
        int inputs = rule.number(at);
        int ahead = at + 2 * inputs;
        int aheads = rule.number(ahead);
        return backs + inputs + aheads > 2
                && all(rule, 2, backs, before)
                && all(rule, at + 2, inputs - 1, inside)
                && all(rule, ahead + 2, aheads, after);
    }

    private static boolean all(LayoutTable rule, int offset, int count, BitSet possible) {
        for (int i = 0; i < count; i++) {
            if (!possible.get(rule.number(offset + 2 * i))) {
                return false;
            }
        }
        return true;
    }
}
