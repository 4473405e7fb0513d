package dev.quoin.lettering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.drawing.FontRequest;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Given files of fonts in a folder, sound and broken, then these are known, used and complained of. */
class FontFilesTest {
    private static final String BARLOW = "/dev/quoin/lettering/fonts/Barlow-Regular.ttf";
    private static final String SCRIPT = "/dev/quoin/lettering/fonts/DancingScript-Bold.ttf";
    private static final String CONDENSED = "/net/sf/jasperreports/fonts/dejavu/DejaVuSansCondensed.ttf";

    private final Problems problems = new Problems();

    @TempDir
    private Path folder;

    @Test
    void theFilesThatARequestNamedAreTold() throws IOException {
        Path condensed = Files.write(folder.resolve("c.ttf"), BundledFonts.read(CONDENSED));
        Path barlow = Files.write(folder.resolve("b.ttf"), BundledFonts.read(BARLOW));
        Files.write(folder.resolve("a.ttf"), BundledFonts.read(SCRIPT));
        FontLibrary library = FontLibrary.open(List.of(folder), false, problems);
        assertEquals(List.of(), library.chosenFiles());
        Fonts.of(library, "DejaVu Sans Condensed", "Barlow", "DejaVu Sans");
        assertEquals(List.of(barlow, condensed), library.chosenFiles());
    }

    @Test
    void bundledFontsAreNoFilesOfTheUsers() throws IOException {
        FontLibrary library = FontLibrary.open(List.of(), false, problems);
        Fonts.TYPESETTER.set("Zoë", Fonts.of(library, "Barlow"));
        assertEquals(List.of(), library.chosenFiles());
        assertEquals(List.of(), library.usedSystemFamilies());
    }

    @Test
    void systemFontsThatTextWasSetInAreNamed() throws IOException {
        FontLibrary library = FontLibrary.open(List.of(), true, problems);
        Fonts.TYPESETTER.set("Zoë", Fonts.of(library, "Dialog"));
        assertEquals(List.of("Dialog"), library.usedSystemFamilies());
    }

    /** ISO/IEC 14496-22, clause 4.6.3: a collection's header gives the offset of each face's table directory. */
    @Test
    void everyFaceOfACollectionIsKnown() throws IOException {
        Files.write(folder.resolve("two.ttc"), collection(BARLOW, SCRIPT));
        assertEquals(
                List.of("Barlow 400", "Dancing Script 700"),
                FontFolder.faces(folder, problems).stream()
                        .map(face -> face.family() + " " + face.weight())
                        .toList());
        FontLibrary library = FontLibrary.open(List.of(folder), false, problems);
        FontSet script = library.select(new FontRequest(List.of("Dancing Script"), 700, false), PLACE, problems)
                .orElseThrow();
        FontSet bundled = Fonts.BUNDLED
                .select(new FontRequest(List.of("Dancing Script"), 700, false), PLACE, problems)
                .orElseThrow();
        assertEquals(Fonts.TYPESETTER.set("Zoë", bundled), Fonts.TYPESETTER.set("Zoë", script));
        assertEquals(List.of(), problems.sorted());
    }

    @Test
    void aFileCutShortIsLeftOutAndSaid() throws IOException {
        byte[] whole = BundledFonts.read(BARLOW);
        Files.write(folder.resolve("cut.ttf"), Arrays.copyOf(whole, whole.length / 2));
        assertEquals(List.of(), FontFolder.faces(folder, problems));
        assertEquals(
                "cut.ttf: warning: not a TrueType or OpenType font, or not a whole one; left out; "
                        + "replace the file or take it out of the folder",
                told());
    }

    @ParameterizedTest
    @ValueSource(strings = {"cmap", "glyf", "loca", "maxp", "hhea", "hmtx", "GSUB", "GPOS", "GDEF", "post"})
    void rubbishBehindASoundHeaderIsAProblemOrSetsTheTextAndNeverACrash(String table) throws IOException {
        Files.write(folder.resolve("broken.ttf"), spoilt(BARLOW, table, 0xFE));
        FontLibrary library = FontLibrary.open(List.of(folder), false, problems);
        library.select(new FontRequest(List.of("Barlow"), 400, false), PLACE, problems)
                .ifPresentOrElse(
                        fonts -> assertNotNull(Fonts.TYPESETTER.set("Zoë Łukasz fi", fonts)),
                        () -> assertTrue(problems.hasErrors()));
    }

    @Test
    void aFontThatDoesNotOpenIsAnErrorThatNamesItsFile() throws IOException {
        Files.write(folder.resolve("broken.ttf"), spoilt(BARLOW, "maxp", 0));
        FontLibrary library = FontLibrary.open(List.of(folder), false, problems);
        assertTrue(library.select(new FontRequest(List.of("Barlow"), 400, false), PLACE, problems)
                .isEmpty());
        assertEquals(
                "broken.ttf: not a font that this machine can use (zero glyphs); "
                        + "replace the file, or take it out of the folder of fonts",
                told());
    }

    private static final Place PLACE = Place.of("tag.svg", 7);

    private String told() {
        return problems.sorted().stream().map(Problem::toString).collect(Collectors.joining("\n"));
    }

    private static byte[] spoilt(String resource, String table, int with) throws IOException {
        byte[] font = BundledFonts.read(resource);
        ByteBuffer buffer = ByteBuffer.wrap(font);
        for (int i = 12; i < 12 + 16 * buffer.getShort(4); i += 16) {
            if (new String(font, i, 4, StandardCharsets.US_ASCII).equals(table)) {
                int start = buffer.getInt(i + 8);
                Arrays.fill(font, start, start + buffer.getInt(i + 12), (byte) with);
            }
        }
        return font;
    }

    private static byte[] collection(String... resources) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeBytes("ttcf");
        out.writeInt(0x00010000);
        out.writeInt(resources.length);
        int start = 12 + 4 * resources.length;
        for (String resource : resources) {
            out.writeInt(start);
            start += BundledFonts.read(resource).length;
        }
        for (String resource : resources) {
            ByteBuffer font = ByteBuffer.wrap(BundledFonts.read(resource));
            for (int i = 12; i < 12 + 16 * font.getShort(4); i += 16) {
                font.putInt(i + 8, font.getInt(i + 8) + bytes.size());
            }
            out.write(font.array());
        }
        return bytes.toByteArray();
    }
}
