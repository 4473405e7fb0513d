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
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

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

    private final List<FontFace> own;
    private final List<FontFace> installed;
    private final Set<FontFace> chosen = ConcurrentHashMap.newKeySet();

    /** From the user's fonts, the bundled ones and the system's. */
    private FontLibrary(List<FontFace> own, List<FontFace> bundled, List<FontFace> installed) {
        this.own = own;
        this.installed = installed;
        for (FontFace face : concat(own, bundled, installed)) {
            families.computeIfAbsent(face.family(), name -> new ArrayList<>()).add(face);
        }
    }

    /**
     * Looks through the folders, without opening a font.
     *
     * @param folders the user's folders of TTF, OTF and TTC files, the first wins
     * @param systemFonts whether fonts installed on this machine may be used too
     * @param problems gets a warning for each font file that cannot be understood
     * @throws IOException if a folder or a file in it cannot be read
     */
    public static FontLibrary open(List<Path> folders, boolean systemFonts, Problems problems) throws IOException {
        List<FontFace> own = new ArrayList<>();
        for (Path folder : folders) {
            own.addAll(FontFolder.faces(folder, problems));
        }
        List<FontFace> bundled = new ArrayList<>(BundledFonts.faces());
        bundled.addAll(StrokeFonts.faces());
        return new FontLibrary(own, bundled, systemFonts ? InstalledFonts.faces() : List.of());
    }

    /**
     * The files of the user's folders that requests have named so far, whether or not text was set in them yet: with these
     * alone the same requests have the same fonts. In the order of the folders and of the files' names in them.
     */
    public List<Path> chosenFiles() {
        return own.stream()
                .filter(chosen::contains)
                .flatMap(face -> face.file().stream())
                .distinct()
                .toList();
    }

    /** The families of this machine's own fonts in which text was set; the platform does not tell their files. */
    public List<String> usedSystemFamilies() {
        return installed.stream()
                .filter(FontLibrary::isUsed)
                .map(FontFace::family)
                .distinct()
                .toList();
    }

    /** The names of all families, in alphabetical order. */
    public Collection<String> families() {
        return families.values().stream().map(faces -> faces.get(0).family()).toList();
    }

    /**
     * The fonts for a request: of each known family the face nearest in style and weight. An unknown first family is an
     * error; unknown later ones are passed over, and so are those whose letters are not of the first one's kind
     * (outlines or strokes). A user's font that does not open is an error.
     */
    public Optional<FontSet> select(FontRequest request, Place place, Problems problems) {
        String wanted = request.families().get(0);
        if (find(wanted).isEmpty()) {
            problems.error(place, "unknown font family '" + wanted + "'", remedy(wanted));
            return Optional.empty();
        }
        Map<String, FontFace> found = new LinkedHashMap<>();
        for (String name : request.families()) {
            find(name).ifPresent(faces -> {
                FontFace face = FontMatch.nearest(faces, request.weight(), request.italic());
                found.putIfAbsent(face.family(), face);
            });
        }
        if (!found.values().stream().allMatch(face -> opens(face, problems))) {
            return Optional.empty();
        }
        chosen.addAll(found.values());
        boolean strokes = found.values().iterator().next().typeface().strokes();
        return Optional.of(new FontSet(found.values().stream()
                .filter(face -> face.typeface().strokes() == strokes)
                .toList()));
    }

    /** A user's font may have a sound header and still be broken; bundled ones are opened when a text needs them. */
    private String remedy(String unknown) {
        String known = Suggestion.remedy(unknown, families());
        return Suggestion.nearest(unknown, families()).isPresent()
                ? known
                : known + "; for others give --fonts with their folder, or --system-fonts";
    }

    private static boolean opens(FontFace face, Problems problems) {
        if (face.file().isEmpty() || !(face.typeface() instanceof OutlineTypeface typeface)) {
            return true;
        }
        Optional<String> trouble = typeface.trouble();
        trouble.ifPresent(what -> problems.error(
                Place.of(face.file().get().getFileName().toString()),
                what,
                "replace the file, or take it out of the folder of fonts"));
        return trouble.isEmpty();
    }

    /**
     * The fonts in which anything can be written down that the job may mark: those for {@code sans-serif}, then of each
     * family the face nearest to a weight, the user's own first. Installed fonts only as far as the job has used them.
     */
    public FontSet forWriting(int weight) {
        Map<String, FontFace> found = new LinkedHashMap<>();
        find("sans-serif").ifPresent(faces -> put(found, faces, weight));
        families.values().stream()
                .filter(faces -> own.contains(faces.get(0)))
                .forEach(faces -> put(found, faces, weight));
        families.values().stream()
                .filter(faces -> !installed.contains(faces.get(0)) || isUsed(faces.get(0)))
                .forEach(faces -> put(found, faces, weight));
        return new FontSet(found.values().stream()
                .filter(face -> !face.typeface().strokes())
                .toList());
    }

    private static boolean isUsed(FontFace face) {
        return face.typeface() instanceof OutlineTypeface font && font.isUsed();
    }

    private static void put(Map<String, FontFace> found, List<FontFace> faces, int weight) {
        FontFace face = FontMatch.nearest(faces, weight, false);
        found.putIfAbsent(face.family(), face);
    }

    /**
     * A bundled font's file, whole.
     *
     * @throws IOException if there is no such font on the class path
     */
    public static byte[] bundled(String family, int weight) throws IOException {
        return BundledFonts.file(family, weight);
    }

    @SafeVarargs
    private static List<FontFace> concat(List<FontFace>... lists) {
        return Stream.of(lists).flatMap(List::stream).toList();
    }

    private Optional<List<FontFace>> find(String name) {
        Optional<List<FontFace>> named = Optional.ofNullable(families.get(name));
        return named.or(() ->
                Optional.ofNullable(GENERIC.get(name.toLowerCase(Locale.ROOT))).map(families::get));
    }
}
