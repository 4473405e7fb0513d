package dev.quoin.lettering;

import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import dev.quoin.lettering.OutlineTypeface.Drawn;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * What plain text needs of a font, written down by {@link PlainTables} so that the platform need not open the font. It
 * covers the plain characters up to U+017F, with which most languages of Europe are written, and the apostrophe of print.
 *
 * <p>Big-endian: the unit and the height of capitals (ems, doubles); for each covered character where what is known of it
 * begins (int; 0 where it is never plain). There: the ink's box (four doubles), the outline (as {@link Path} writes it), both in
 * ems; for each script: its advance (float), how many characters do not follow at that advance (int), and of each of these
 * its place and the step to it (short and float).
 */
final class PlainTable implements PlainFont {
    /** How many characters are covered. */
    static final int COUNT = 0x180 - ' ' + 1;

    static final int HEAD = 2 * Double.BYTES;

    private final ByteBuffer bytes;
    private final AtomicReferenceArray<Letter> letters = new AtomicReferenceArray<>(COUNT);

    PlainTable(byte[] bytes) {
        this.bytes = ByteBuffer.wrap(bytes);
    }

    /** Whether a table says how a text is set, even if only that it is not plain. */
    static boolean covers(String text) {
        for (int i = 0; i < text.length(); i++) {
            int index = PlainLatin.index(text.charAt(i));
            if (index >= 0 && place(index) < 0) {
                return false;
            }
        }
        return true;
    }

    /** The place of a character in the table, from 0 to {@link #COUNT} - 1; -1 for those that it does not cover. */
    static int place(int index) {
        if (index == PlainLatin.COUNT - 1) {
            return COUNT - 1;
        }
        return index < COUNT - 1 ? index : -1;
    }

    /** The height of capitals, ems. */
    double capHeight() {
        return bytes.getDouble(Double.BYTES);
    }

    @Override
    public double unit() {
        return bytes.getDouble(0);
    }

    @Override
    public boolean has(int index) {
        int place = place(index);
        return place >= 0 && start(place) != 0;
    }

    @Override
    public Drawn drawn(int index) {
        return letter(index).drawn();
    }

    @Override
    public float between(int first, int second, PlainScript script) {
        return steps(first, script)[place(second)];
    }

    @Override
    public float after(int last, PlainScript script) {
        float[] steps = steps(last, script);
        return steps[steps.length - 1];
    }

    private float[] steps(int index, PlainScript script) {
        Letter letter = letter(index);
        return script == PlainScript.LATIN ? letter.latin() : letter.common();
    }

    private int start(int place) {
        return bytes.getInt(HEAD + Integer.BYTES * place);
    }

    private Letter letter(int index) {
        int place = place(index);
        Letter known = letters.get(place);
        if (known == null) {
            known = Letter.read(bytes.duplicate().position(start(place)));
            letters.set(place, known);
        }
        return known;
    }

    /**
     * A character.
     *
     * @param latin from it to each other character, by their places, and to the end
     * @param common the same in text without a letter
     */
    private record Letter(Drawn drawn, float[] latin, float[] common) {
        static Letter read(ByteBuffer from) {
            Box ink = new Box(from.getDouble(), from.getDouble(), from.getDouble(), from.getDouble());
            return new Letter(new Drawn(Path.read(from), ink), steps(from), steps(from));
        }

        private static float[] steps(ByteBuffer from) {
            float[] steps = new float[COUNT + 1];
            Arrays.fill(steps, from.getFloat());
            for (int i = from.getInt(); i > 0; i--) {
                steps[from.getShort()] = from.getFloat();
            }
            return steps;
        }
    }
}
