package dev.quoin.lettering;

import dev.quoin.lettering.OutlineTypeface.OpenFont;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.awt.Font;
import java.awt.FontFormatException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The font files of a folder, and of the folders in it. */
final class FontFolder {
    private static final int DEEPEST = 8;

    private FontFolder() {}

    /** All faces, in the order of the files' names, so that no file system decides which of two wins. */
    static List<FontFace> faces(Path folder, Problems problems) throws IOException {
        List<FontFace> faces = new ArrayList<>();
        for (Path file : files(folder)) {
            faces.addAll(faces(file, Files.readAllBytes(file), problems));
        }
        return faces;
    }

    /** The font files, by name. */
    static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder, DEEPEST)) {
            return files.filter(FontFolder::isFont).sorted().toList();
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    /** Opens a font from the bytes of its file. */
    static OpenFont open(byte[] file, String name) throws IOException {
        FontHeader header = FontHeader.read(ByteBuffer.wrap(file))
                .orElseThrow(() -> new IOException(name + " is not a TrueType or OpenType font"));
        try {
            Font font = Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(file));
            return OpenFont.of(font, header.unitsPerEm(), header.capHeight());
        } catch (FontFormatException e) {
            throw new IOException(name + " is not a font that this machine can use: " + e.getMessage(), e);
        }
    }

    private static List<FontFace> faces(Path file, byte[] bytes, Problems problems) {
        Optional<FontHeader> read = FontHeader.read(ByteBuffer.wrap(bytes));
        if (read.isEmpty()) {
            problems.warning(
                    Place.of(file.getFileName().toString()),
                    "not a TrueType or OpenType font, left out",
                    "replace the file or take it out of the folder");
            return List.of();
        }
        FontHeader header = read.get();
        OutlineTypeface typeface = new OutlineTypeface(() -> reopen(file));
        return header.families().stream()
                .map(family -> new FontFace(family, header.weight(), header.italic(), typeface))
                .toList();
    }

    private static OpenFont reopen(Path file) {
        try {
            return open(Files.readAllBytes(file), file.getFileName().toString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean isFont(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        return (name.endsWith(".ttf") || name.endsWith(".otf")) && Files.isRegularFile(file);
    }
}
