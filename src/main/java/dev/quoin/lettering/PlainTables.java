package dev.quoin.lettering;

import dev.quoin.geometry.Box;
import dev.quoin.lettering.OutlineTypeface.Drawn;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Writes down what plain text needs of fonts, when Quoin is built: to ask the platform again at each start takes longer. */
public final class PlainTables {
    private PlainTables() {}

    /**
     * The tables of the bundled fonts, by their names on the class path.
     *
     * @throws IOException if a font cannot be read
     */
    public static Map<String, byte[]> ofBundledFonts() throws IOException {
        try {
            return new TreeMap<>(BundledFonts.resources().parallelStream()
                    .collect(Collectors.toMap(
                            BundledFonts::tableOf, font -> write(new OutlineTypeface(() -> BundledFonts.open(font))))));
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    /** The table of a font whose rules are known. */
    static byte[] write(OutlineTypeface typeface) {
        PlainFont font = typeface.shaped().orElseThrow();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        int[] starts = new int[PlainTable.COUNT];
        ByteArrayOutputStream letters = new ByteArrayOutputStream();
        try {
            for (int index = 0; index < PlainLatin.COUNT; index++) {
                int place = PlainTable.place(index);
                if (place >= 0 && font.has(index)) {
                    starts[place] = PlainTable.HEAD + Integer.BYTES * PlainTable.COUNT + letters.size();
                    letter(font, index, new DataOutputStream(letters));
                }
            }
            DataOutputStream table = new DataOutputStream(bytes);
            table.writeDouble(font.unit());
            table.writeDouble(typeface.capHeight());
            for (int start : starts) {
                table.writeInt(start);
            }
        } catch (IOException inMemory) {
            throw new UncheckedIOException(inMemory);
        }
        bytes.writeBytes(letters.toByteArray());
        return bytes.toByteArray();
    }

    private static void letter(PlainFont font, int index, DataOutputStream out) throws IOException {
        Drawn drawn = font.drawn(index);
        Box ink = drawn.ink();
        out.writeDouble(ink.minX());
        out.writeDouble(ink.minY());
        out.writeDouble(ink.maxX());
        out.writeDouble(ink.maxY());
        drawn.outline().write(out);
        for (PlainScript script : PlainScript.values()) {
            steps(font, index, script, out);
        }
    }

    private static void steps(PlainFont font, int index, PlainScript script, DataOutputStream out) throws IOException {
        float after = font.after(index, script);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream others = new DataOutputStream(bytes);
        for (int next = 0; next < PlainLatin.COUNT; next++) {
            int place = PlainTable.place(next);
            if (place >= 0 && font.has(next)) {
                float step = font.between(index, next, script);
                if (step != after) {
                    others.writeShort(place);
                    others.writeFloat(step);
                }
            }
        }
        out.writeFloat(after);
        out.writeInt(bytes.size() / (Short.BYTES + Float.BYTES));
        bytes.writeTo(out);
    }
}
