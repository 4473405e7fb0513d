package dev.quoin.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The built-in shop's tables in a folder, to be changed. */
final class BuiltInShop {
    private BuiltInShop() {}

    /** Copies them, with a line added to one. */
    static void copyTo(Path folder, String table, String line) throws IOException {
        Files.createDirectories(folder);
        for (String name : List.of("machine.csv", "lenses.csv", "recipes.csv", "blanks.csv", "materials.csv")) {
            try (InputStream in = BuiltInShop.class.getResourceAsStream("/dev/quoin/shop/" + name)) {
                String text = new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
                Files.writeString(folder.resolve(name), name.equals(table) ? text + line : text);
            }
        }
    }
}
