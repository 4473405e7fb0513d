package dev.quoin.lettering;

import dev.quoin.drawing.FontRequest;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.problem.Suggestion;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The fonts that a job may use: those of the user's folders, then the bundled ones, then, if asked for, the system's.
 * Names of families are compared without regard to case; the user's font hides a bundled one of the same name, weight
 * and style. A font's file is opened only when a text needs it. Safe for use by several threads.
 */
public final class FontLibrary {
    /** CSS's generic families (CSS Fonts Module Level 4, section 2.1.3) and what stands for each. */
    private static final Map<String, String> GENERIC = Map.of(
            "serif", "DejaVu Serif",
            "sans-serif", "DejaVu Sans",
            "monospace", "DejaVu Sans Mono",
            "cursive", "Dancing Script",
            "fantasy", "Barlow",
            "system-ui", "DejaVu Sans");

    private final Map<String, List<FontFace>> families = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);

    private FontLibrary(List<FontFace> faces) {
        for (FontFace face : faces) {
            families.computeIfAbsent(face.family(), name -> new ArrayList<>()).add(face);
        }
    }

    /**
     * Looks through the folders, without opening a font.
     *
     * @param folders the user's folders of TTF and OTF files, the first wins
     * @param systemFonts whether fonts installed on this machine may be used too
     * @param problems gets a warning for each font file that cannot be understood
     * @throws IOException if a folder or a file in it cannot be read
     */
    public static FontLibrary open(List<Path> folders, boolean systemFonts, Problems problems) throws IOException {
        List<FontFace> faces = new ArrayList<>();
        for (Path folder : folders) {
            faces.addAll(FontFolder.faces(folder, problems));
        }
        faces.addAll(BundledFonts.faces());
        faces.addAll(StrokeFonts.faces());
        if (systemFonts) {
            faces.addAll(InstalledFonts.faces());
        }
        return new FontLibrary(faces);
    }

    /** The font files of a folder that {@link #open} would read, so that a run can keep them. */
    public static List<Path> files(Path folder) throws IOException {
        return FontFolder.files(folder);
    }

    /** The names of all families, in alphabetical order. */
    public Collection<String> families() {
        return families.values().stream().map(faces -> faces.get(0).family()).toList();
    }

    /**
     * The fonts for a request: of each known family the face nearest in style and weight. An unknown first family is an
     * error; unknown later ones are passed over, and so are those whose letters are not of the first one's kind
     * (outlines or strokes).
     */
    public Optional<FontSet> select(FontRequest request, Place place, Problems problems) {
        String wanted = request.families().get(0);
        if (find(wanted).isEmpty()) {
            problems.error(place, "unknown font family '" + wanted + "'", Suggestion.remedy(wanted, families()));
            return Optional.empty();
        }
        Map<String, FontFace> chosen = new LinkedHashMap<>();
        for (String name : request.families()) {
            find(name).ifPresent(faces -> {
                FontFace face = FontMatch.nearest(faces, request.weight(), request.italic());
                chosen.putIfAbsent(face.family(), face);
            });
        }
        boolean strokes = chosen.values().iterator().next().typeface().strokes();
        return Optional.of(new FontSet(chosen.values().stream()
                .filter(face -> face.typeface().strokes() == strokes)
                .toList()));
    }

    private Optional<List<FontFace>> find(String name) {
        Optional<List<FontFace>> named = Optional.ofNullable(families.get(name));
        return named.or(() ->
                Optional.ofNullable(GENERIC.get(name.toLowerCase(Locale.ROOT))).map(families::get));
    }
}
