package dev.quoin.lettering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.drawing.FontRequest;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Given folders of fonts, then these families are known, and these faces are chosen. */
class FontLibraryTest {
    private static final Place PLACE = Place.of("tag.svg", 7);

    private final Problems problems = new Problems();

    @Test
    void everyBundledFaceOpensAndHasAnH() {
        for (String family : Fonts.BUNDLED.families()) {
            for (int weight : new int[] {400, 500, 700}) {
                for (boolean italic : new boolean[] {false, true}) {
                    FontSet fonts = Fonts.BUNDLED
                            .select(new FontRequest(List.of(family), weight, italic), PLACE, problems)
                            .orElseThrow();
                    TypesetText h = (TypesetText) Fonts.TYPESETTER.set("H", fonts);
                    assertEquals(h.ink().maxY(), fonts.capHeight(), 0.1, family);
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "serif,DejaVu Serif",
        "sans-serif,DejaVu Sans",
        "monospace,DejaVu Sans Mono",
        "cursive,Dancing Script",
        "fantasy,Barlow",
        "dejavu sans,DejaVu Sans",
    })
    void genericNamesAndAnyCaseNameABundledFamily(String asked, String family) {
        assertEquals(List.of(family), Fonts.of(asked).families());
    }

    @Test
    void anUnknownFirstFamilyIsAnErrorThatNamesTheNearest() {
        Optional<FontSet> fonts =
                Fonts.BUNDLED.select(new FontRequest(List.of("Barlov", "serif"), 400, false), PLACE, problems);
        assertTrue(fonts.isEmpty());
        assertEquals(
                "tag.svg:7: unknown font family 'Barlov'; did you mean 'Barlow'?",
                problems.sorted().get(0).toString());
    }

    @Test
    void anUnknownFirstFamilyFarFromAllListsTheKnownOnes() {
        Fonts.BUNDLED.select(new FontRequest(List.of("Nonesuch Grotesk"), 400, false), PLACE, problems);
        assertTrue(problems.sorted().get(0).remedy().startsWith("known: Barlow, Dancing Script, DejaVu Sans, "));
    }

    @Test
    void anUnknownLaterFamilyIsPassedOver() {
        assertEquals(
                List.of("Barlow", "DejaVu Sans"),
                Fonts.of("Barlow", "Nonesuch", "sans-serif").families());
    }

    /** CSS Fonts Module Level 4, section 5.2, on a family that has 400, 500 and 700. */
    @ParameterizedTest
    @CsvSource({"100,400", "400,400", "450,500", "500,500", "600,700", "900,700"})
    void aWeightTakesTheNearestFaceAsCssDoes(int wanted, int chosen) {
        FontSet fonts = Fonts.BUNDLED
                .select(new FontRequest(List.of("Barlow"), wanted, false), PLACE, problems)
                .orElseThrow();
        assertEquals(chosen, fonts.faces().get(0).weight());
    }

    @Test
    void aFontOfTheUsersFolderIsKnownByTheNameInIt(@TempDir Path folder) throws IOException {
        copy("/dev/quoin/lettering/fonts/DancingScript-Bold.ttf", folder.resolve("a.ttf"));
        copy("/net/sf/jasperreports/fonts/dejavu/DejaVuSansCondensed-Oblique.ttf", folder.resolve("b.ttf"));
        List<FontFace> faces = FontFolder.faces(folder, problems);
        assertEquals(
                List.of("Dancing Script 700 false", "DejaVu Sans Condensed 400 true"),
                faces.stream()
                        .map(face -> face.family() + " " + face.weight() + " " + face.italic())
                        .toList());
        assertTrue(problems.sorted().isEmpty());
    }

    @Test
    void theUsersFontHidesTheBundledOneOfItsName(@TempDir Path folder) throws IOException {
        copy("/dev/quoin/lettering/fonts/Barlow-Regular.ttf", folder.resolve("x.ttf"));
        FontLibrary library = FontLibrary.open(List.of(folder), false, problems);
        assertNotEquals(Fonts.of("Barlow"), Fonts.of(library, "Barlow"));
        assertEquals(
                Fonts.set("Zoë", "Barlow").outline(),
                ((TypesetText) Fonts.TYPESETTER.set("Zoë", Fonts.of(library, "Barlow"))).outline());
    }

    @Test
    void aFileThatIsNoFontIsLeftOutAndSaid(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("broken.ttf"), "not a font at all, though long enough to be read as one");
        Files.writeString(folder.resolve("empty.otf"), "");
        Files.writeString(folder.resolve("notes.txt"), "not asked");
        FontLibrary library = FontLibrary.open(List.of(folder), false, problems);
        assertEquals(Fonts.BUNDLED.families(), library.families());
        assertEquals(
                List.of("broken.ttf", "empty.otf"),
                problems.sorted().stream().map(p -> p.place().file()).toList());
        assertFalse(problems.hasErrors());
    }

    @Test
    void aFolderThatCannotBeReadThrows(@TempDir Path folder) {
        List<Path> absent = List.of(folder.resolve("absent"));
        assertThrows(IOException.class, () -> FontLibrary.open(absent, false, problems));
    }

    @Test
    void systemFontsAreUsedOnlyIfAskedFor() throws IOException {
        FontLibrary without = FontLibrary.open(List.of(), false, problems);
        FontLibrary with = FontLibrary.open(List.of(), true, problems);
        assertEquals(Fonts.BUNDLED.families(), without.families());
        // The platform's five logical families are always there.
        assertTrue(Stream.of("Dialog", "Serif").allMatch(with.families()::contains), with.families()::toString);
    }

    private static void copy(String resource, Path file) throws IOException {
        Files.write(file, BundledFonts.read(resource));
    }
}
