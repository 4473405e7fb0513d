package dev.quoin.lettering;

import dev.quoin.lettering.OutlineTypeface.OpenFont;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemException;
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
            faces.addAll(facesOf(file, problems));
        }
        return faces;
    }

    /** The font files, by name. */
    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder, DEEPEST)) {
            return files.filter(FontFolder::isFont).sorted().toList();
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static List<FontFace> facesOf(Path file, Problems problems) throws IOException {
        List<FontHeader> headers = headers(file);
        if (headers.isEmpty()) {
            problems.warning(
                    Place.of(file.getFileName().toString()),
                    "not a TrueType or OpenType font, or not a whole one; left out",
                    "replace the file or take it out of the folder");
        }
        List<FontFace> faces = new ArrayList<>();
        for (int i = 0; i < headers.size(); i++) {
            FontHeader header = headers.get(i);
            int index = i;
            OutlineTypeface typeface = new OutlineTypeface(() -> open(file, index, header));
            for (String family : header.families()) {
                faces.add(new FontFace(family, header.weight(), header.italic(), typeface, Optional.of(file)));
            }
        }
        return faces;
    }

    private static List<FontHeader> headers(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file)) {
            return FontHeader.all(FontData.of(channel));
        }
    }

    /** Opens a face; its file is not read whole, and not copied. */
    private static OpenFont open(Path file, int index, FontHeader header) throws IOException {
        try (FileChannel channel = FileChannel.open(file)) {
            Font font = Font.createFonts(file.toFile())[index];
            return OpenFont.of(font, header.unitsPerEm(), header.capHeight())
                    .withLayout(FontHeader.layout(FontData.of(channel), index));
        } catch (FontFormatException e) {
            throw new FileSystemException(
                    file.getFileName().toString(),
                    null,
                    "not a font that this machine can use (" + e.getMessage() + ")");
        }
    }

    private static boolean isFont(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        return (name.endsWith(".ttf") || name.endsWith(".otf") || name.endsWith(".ttc")) && Files.isRegularFile(file);
    }
}
