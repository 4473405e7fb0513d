package dev.quoin.lettering;

import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the tables of a TrueType or OpenType file say about it (ISO/IEC 14496-22, clauses 4.4 to 5.2: table directory,
 * {@code head}, {@code name}, {@code OS/2}).
 *
 * @param families the names it goes by: its typographic family if it is of normal width, and its family name
 * @param weight CSS's weight
 * @param italic whether it is italic or oblique
 * @param unitsPerEm units of its design grid in an em
 * @param capHeight the height of its capitals in ems; 0 where the file does not say
 */
record FontHeader(List<String> families, int weight, boolean italic, int unitsPerEm, double capHeight) {
    private static final int TRUE_TYPE = 0x00010000;
    private static final int TRUE = 0x74727565;
    private static final int OPEN_TYPE = 0x4F54544F;
    private static final int FAMILY = 1;
    private static final int TYPOGRAPHIC_FAMILY = 16;
    private static final int NORMAL_WIDTH = 5;
    private static final int ENGLISH_US = 0x409;

    /** Reads the tables; empty if this is not a usable TrueType or OpenType file. */
    static Optional<FontHeader> read(ByteBuffer file) {
        try {
            int version = file.getInt(0);
            if (version != TRUE_TYPE && version != TRUE && version != OPEN_TYPE) {
                return Optional.empty();
            }
            return header(tables(file));
        } catch (IndexOutOfBoundsException | IllegalArgumentException broken) {
            return Optional.empty();
        }
    }

    private static Optional<FontHeader> header(Map<String, ByteBuffer> tables) {
        ByteBuffer head = tables.get("head");
        ByteBuffer name = tables.get("name");
        if (head == null || name == null) {
            return Optional.empty();
        }
        int unitsPerEm = Short.toUnsignedInt(head.getShort(18));
        boolean italic = (head.getShort(44) & 2) != 0;
        int weight = (head.getShort(44) & 1) != 0 ? 700 : 400;
        int width = NORMAL_WIDTH;
        double capHeight = 0;
        ByteBuffer os2 = tables.get("OS/2");
        if (os2 != null) {
            weight = Short.toUnsignedInt(os2.getShort(4));
            width = os2.getShort(6);
            italic |= (os2.getShort(62) & 0x201) != 0;
            capHeight = os2.getShort(0) >= 2 ? (double) os2.getShort(88) / unitsPerEm : 0;
        }
        List<String> families = families(name, width);
        return families.isEmpty() || unitsPerEm == 0
                ? Optional.empty()
                : Optional.of(new FontHeader(families, weight, italic, unitsPerEm, capHeight));
    }

    private static Map<String, ByteBuffer> tables(ByteBuffer file) {
        Map<String, ByteBuffer> tables = new HashMap<>();
        int count = Short.toUnsignedInt(file.getShort(4));
        for (int i = 0; i < count; i++) {
            int entry = 12 + 16 * i;
            byte[] tag = new byte[4];
            file.get(entry, tag);
            tables.put(
                    new String(tag, StandardCharsets.US_ASCII),
                    file.slice(file.getInt(entry + 8), file.getInt(entry + 12)));
        }
        return tables;
    }

    private static List<String> families(ByteBuffer name, int width) {
        Set<String> found = new LinkedHashSet<>();
        if (width == NORMAL_WIDTH) {
            name(name, TYPOGRAPHIC_FAMILY).ifPresent(found::add);
        }
        name(name, FAMILY).ifPresent(found::add);
        return new ArrayList<>(found);
    }

    /** A record of the name table: the English one for Windows, else the first that can be read. */
    private static Optional<String> name(ByteBuffer table, int wanted) {
        int count = Short.toUnsignedInt(table.getShort(2));
        int strings = Short.toUnsignedInt(table.getShort(4));
        Optional<String> first = Optional.empty();
        for (int i = 0; i < count; i++) {
            int entry = 6 + 12 * i;
            int platform = table.getShort(entry);
            if (table.getShort(entry + 6) != wanted || platform == 2) {
                continue;
            }
            byte[] text = new byte[Short.toUnsignedInt(table.getShort(entry + 8))];
            table.get(strings + Short.toUnsignedInt(table.getShort(entry + 10)), text);
            Charset charset = platform == 1 ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_16BE;
            String value = new String(text, charset).strip();
            if (platform == 3 && table.getShort(entry + 4) == ENGLISH_US) {
                return Optional.of(value);
            }
            first = first.or(() -> Optional.of(value)).filter(known -> !known.isEmpty());
        }
        return first;
    }
}
