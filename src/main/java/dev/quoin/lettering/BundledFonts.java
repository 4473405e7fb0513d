package dev.quoin.lettering;

import dev.quoin.lettering.OutlineTypeface.OpenFont;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The fonts on the class path, listed in {@code families.txt} so that none is opened before it is needed. */
final class BundledFonts {
    private static final String LIST = "/dev/quoin/lettering/fonts/families.txt";

    private BundledFonts() {}

    static List<FontFace> faces() throws IOException {
        List<FontFace> faces = new ArrayList<>();
        String list = new String(read(LIST), StandardCharsets.UTF_8);
        for (String line : list.lines().filter(l -> !l.startsWith("#")).toList()) {
            String[] cells = line.split("; ", -1);
            OutlineTypeface typeface = new OutlineTypeface(() -> open(cells[3]));
            faces.add(new FontFace(cells[0], Integer.parseInt(cells[1]), cells[2].equals("italic"), typeface));
        }
        return faces;
    }

    /** A file on the class path, whole. */
    static byte[] read(String resource) throws IOException {
        try (InputStream in = BundledFonts.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new FileNotFoundException(resource + " is not on the class path");
            }
            return in.readAllBytes();
        }
    }

    private static OpenFont open(String resource) {
        try {
            return FontFolder.open(read(resource), resource);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
