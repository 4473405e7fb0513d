package dev.quoin.shop;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The tables of a shop as they are, so that a run can keep them.
 *
 * @param origin how problems name the folder
 * @param files the content of each file by its name, in the order of {@link #NAMES}; those that are missing are left out
 */
public record ShopFiles(String origin, Map<String, byte[]> files) {
    public static final String LENSES = "lenses.csv";
    public static final String MACHINE = "machine.csv";
    public static final String RECIPES = "recipes.csv";
    public static final String BLANKS = "blanks.csv";
    public static final String MATERIALS = "materials.csv";
    /** All files of a shop. */
    public static final List<String> NAMES = List.of(LENSES, MACHINE, RECIPES, BLANKS, MATERIALS);

    private static final String BUILT_IN = "built-in shop";

    public ShopFiles {
        files = Collections.unmodifiableMap(new LinkedHashMap<>(files));
    }

    /** The shop that the program brings along: invented examples, as its notes say. */
    public static ShopFiles builtIn() throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (String name : NAMES) {
            try (InputStream in = ShopFiles.class.getResourceAsStream(name)) {
                if (in == null) {
                    throw new FileNotFoundException("the built-in " + name);
                }
                files.put(name, in.readAllBytes());
            }
        }
        return new ShopFiles(BUILT_IN, files);
    }

    /**
     * The tables in a folder.
     *
     * @throws IOException if the folder or a file in it cannot be read
     */
    public static ShopFiles of(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            throw new NoSuchFileException(folder.toString(), null, "there is no such shop folder; check its name");
        }
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (String name : NAMES) {
            Path file = folder.resolve(name);
            if (Files.exists(file)) {
                files.put(name, Files.readAllBytes(file));
            }
        }
        Path last = folder.toAbsolutePath().normalize().getFileName();
        return new ShopFiles(last == null ? folder.toString() : last.toString(), files);
    }

    /** Whether these are the invented examples. */
    public boolean isBuiltIn() {
        return origin.equals(BUILT_IN);
    }

    /** How problems name a file of the shop. */
    public String place(String name) {
        return origin + "/" + name;
    }
}
