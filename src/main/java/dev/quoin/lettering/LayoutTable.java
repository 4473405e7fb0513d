package dev.quoin.lettering;

import java.nio.ByteBuffer;
import java.util.BitSet;

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

    /** The class into which this class definition puts a glyph; 0 for those that it does not name. */
    int classOf(int glyph) {
        if (number(0) == 1) {
            int place = glyph - number(2);
            return place >= 0 && place < number(4) ? number(6 + 2 * place) : 0;
        }
        for (int i = 0; i < number(2); i++) {
            if (glyph >= number(4 + 6 * i) && glyph <= number(6 + 6 * i)) {
                return number(8 + 6 * i);
            }
        }
        return 0;
    }
}
