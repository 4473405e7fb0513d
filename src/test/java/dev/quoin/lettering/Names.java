package dev.quoin.lettering;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Real names by locale: first ones, then last ones. Source and licence: README.md beside the data. */
final class Names {
    static final Map<String, List<String>> BY_LOCALE = read();

    private Names() {}

    /** All names of all locales. */
    static List<String> all() {
        return BY_LOCALE.values().stream().flatMap(List::stream).toList();
    }

    private static Map<String, List<String>> read() {
        Map<String, List<String>> names = new TreeMap<>();
        try (InputStream in = Names.class.getResourceAsStream("/dev/quoin/names/names.tsv")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            for (String line : text.lines().skip(1).toList()) {
                String[] cells = line.split("\t", -1);
                names.computeIfAbsent(cells[0], locale -> new ArrayList<>()).add(cells[2]);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return names;
    }
}
