package dev.quoin.lettering;

import java.io.IOException;
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
 * collections, {@code head}, {@code name}, {@code OS/2}).
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
    private static final int COLLECTION = 0x74746366;
    private static final int MOST_FACES = 256;
    private static final Set<String> READ = Set.of("head", "name", "OS/2");
    private static final Set<String> LAYOUT = Set.of("GSUB", "GPOS", "GDEF", "kern", "morx", "mort", "kerx");
    private static final int FAMILY = 1;
    private static final int TYPOGRAPHIC_FAMILY = 16;
    private static final int NORMAL_WIDTH = 5;
    private static final int ENGLISH_US = 0x409;

    /** The headers of all faces in a file, of which a collection has several; none if this is not a usable font file. */
    static List<FontHeader> all(FontData file) throws IOException {
        List<FontHeader> headers = new ArrayList<>();
        try {
            for (long start : starts(file)) {
                int version = file.at(start, 4).getInt(0);
                if (version != TRUE_TYPE && version != TRUE && version != OPEN_TYPE) {
                    return List.of();
                }
                Optional<FontHeader> header = header(tables(file, start, READ));
                if (header.isEmpty()) {
                    return List.of();
                }
                headers.add(header.get());
            }
        } catch (IndexOutOfBoundsException | IllegalArgumentException broken) {
            return List.of();
        }
        return headers;
    }

    /** Where the table directory of each face stands. */
    private static List<Long> starts(FontData file) throws IOException {
        if (file.at(0, 4).getInt(0) != COLLECTION) {
            return List.of(0L);
        }
        int count = file.at(8, 4).getInt(0);
        ByteBuffer offsets = file.at(12, Math.multiplyExact(4, Math.min(count, MOST_FACES)));
        List<Long> starts = new ArrayList<>();
        while (offsets.hasRemaining()) {
            starts.add(Integer.toUnsignedLong(offsets.getInt()));
        }
        return starts;
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

    /**
     * The tables in which a face says how glyphs depend on each other, by name; empty if it has rules of another make.
     *
     * @param face 0 for the first
     */
    static Optional<Map<String, ByteBuffer>> layout(FontData file, int face) throws IOException {
        Map<String, ByteBuffer> tables = tables(file, starts(file).get(face), LAYOUT);
        ByteBuffer kern = tables.get("kern");
        boolean apple = tables.containsKey("morx")
                || tables.containsKey("mort")
                || tables.containsKey("kerx")
                || (kern != null && kern.getShort(0) != 0);
        return apple ? Optional.empty() : Optional.of(tables);
    }

    /** The wanted ones of the tables. All that the directory lists must lie in the file. */
    private static Map<String, ByteBuffer> tables(FontData file, long start, Set<String> wanted) throws IOException {
        Map<String, ByteBuffer> tables = new HashMap<>();
        int count = Short.toUnsignedInt(file.at(start + 4, 2).getShort(0));
        ByteBuffer directory = file.at(start + 12, 16 * count);
        for (int i = 0; i < count; i++) {
            byte[] tag = new byte[4];
            directory.get(16 * i, tag);
            long offset = Integer.toUnsignedLong(directory.getInt(16 * i + 8));
            long length = Integer.toUnsignedLong(directory.getInt(16 * i + 12));
            if (offset + length > file.size()) {
                throw new IndexOutOfBoundsException();
            }
            String name = new String(tag, StandardCharsets.US_ASCII);
            if (wanted.contains(name)) {
                tables.put(name, file.at(offset, (int) Math.min(length, FontData.LONGEST)));
            }
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
