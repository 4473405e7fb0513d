package dev.quoin.lettering;

import java.nio.ByteBuffer;
import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;

/** A table inside a font's layout tables, which point at each other by offsets (ISO/IEC 14496-22, clause 6.2). */
record LayoutTable(ByteBuffer bytes, int start) {
    /** An unsigned number of two bytes. */
    int number(int offset) {
        return Short.toUnsignedInt(bytes.getShort(start + offset));
    }

    /** The table whose offset stands there. */
    LayoutTable at(int offset) {
        return new LayoutTable(bytes, start + number(offset));
    }

    /** The same, with an offset of four bytes. */
    LayoutTable farAt(int offset) {
        return new LayoutTable(bytes, start + bytes.getInt(start + offset));
    }

    /** The glyphs of this coverage table. */
    BitSet coverage() {
        BitSet glyphs = new BitSet();
        int count = number(2);
        for (int i = 0; i < count; i++) {
            if (number(0) == 1) {
                glyphs.set(number(4 + 2 * i));
            } else {
                glyphs.set(number(4 + 6 * i), number(6 + 6 * i) + 1);
            }
        }
        return glyphs;
    }

    /** The glyphs among these by the class into which this class definition puts them: 0 for those that it does not name. */
    Map<Integer, BitSet> byClass(BitSet glyphs) {
        Map<Integer, BitSet> classes = new HashMap<>();
        BitSet unnamed = (BitSet) glyphs.clone();
        boolean list = number(0) == 1;
        int entries = number(list ? 4 : 2);
        for (int i = 0; i < entries; i++) {
            int first = list ? number(2) + i : number(4 + 6 * i);
            int last = list ? first : number(6 + 6 * i);
            int named = list ? number(6 + 2 * i) : number(8 + 6 * i);
            for (int glyph = unnamed.nextSetBit(first);
                    glyph >= 0 && glyph <= last;
                    glyph = unnamed.nextSetBit(glyph + 1)) {
                classes.computeIfAbsent(named, made -> new BitSet()).set(glyph);
                unnamed.clear(glyph);
            }
        }
        if (!unnamed.isEmpty()) {
            classes.computeIfAbsent(0, made -> new BitSet()).or(unnamed);
        }
        return classes;
    }
}
