package dev.quoin.lettering;

import dev.quoin.lettering.OutlineTypeface.OpenFont;
import java.awt.Font;
import java.awt.FontFormatException;
import java.io.ByteArrayInputStream;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The fonts on the class path, listed in {@code families.txt} so that none is opened before it is needed. */
final class BundledFonts {
    private static final String FOLDER = "/dev/quoin/lettering/fonts/";
    private static final String LIST = FOLDER + "families.txt";

    private BundledFonts() {}

    static List<FontFace> faces() throws IOException {
        List<FontFace> faces = new ArrayList<>();
        for (String[] cells : list()) {
            OutlineTypeface typeface = new OutlineTypeface(() -> open(cells[3]), () -> table(cells[3]));
            faces.add(new FontFace(
                    cells[0], Integer.parseInt(cells[1]), cells[2].equals("italic"), typeface, Optional.empty()));
        }
        return faces;
    }

    /** The names of all fonts' files on the class path. */
    static List<String> resources() throws IOException {
        return list().stream().map(cells -> cells[3]).toList();
    }

    private static List<String[]> list() throws IOException {
        String list = new String(read(LIST), StandardCharsets.UTF_8);
        return list.lines()
                .filter(line -> !line.startsWith("#"))
                .map(line -> line.split("; ", -1))
                .toList();
    }

    /** The name on the class path of the table that the build may have made of a font. */
    static String tableOf(String resource) {
        String file = resource.substring(resource.lastIndexOf('/') + 1);
        return FOLDER + file.substring(0, file.lastIndexOf('.')) + ".plain";
    }

    private static Optional<PlainTable> table(String resource) throws IOException {
        try (InputStream in = BundledFonts.class.getResourceAsStream(tableOf(resource))) {
            return in == null ? Optional.empty() : Optional.of(new PlainTable(in.readAllBytes()));
        }
    }

    /** The file of a font of normal style. */
    static byte[] file(String family, int weight) throws IOException {
        List<String> face = List.of(family, String.valueOf(weight), "normal");
        return read(list().stream()
                .filter(cells -> List.of(cells).subList(0, 3).equals(face))
                .map(cells -> cells[3])
                .findFirst()
                .orElse(String.join(" ", face)));
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

    static OpenFont open(String resource) throws IOException {
        byte[] file = read(resource);
        FontData data = FontData.of(file);
        FontHeader header = FontHeader.all(data).get(0);
        try {
            Font font = platformFont(file, resource);
            return OpenFont.of(font, header.unitsPerEm(), header.capHeight()).withLayout(FontHeader.layout(data, 0));
        } catch (FontFormatException e) {
            throw new IOException("this machine cannot use the bundled font " + resource, e);
        }
    }

    private static Font platformFont(byte[] file, String resource) throws FontFormatException, IOException {
        try {
            return Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(file));
        } catch (IOException e) {
            throw TextEngine.ofFont(resource.substring(resource.lastIndexOf('/') + 1), e);
        }
    }
}
