package dev.quoin.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.geometry.Box;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Recipe;
import dev.quoin.shop.ShopFiles;
import dev.quoin.shop.ShopReader;
import dev.quoin.store.PlateMark;
import dev.quoin.store.PlateReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Given a scrap plate of 60 x 40 mm turned by 90 degrees, then settings are tried on it like this. */
class GridTest {
    @TempDir
    Path folder;

    private Path shop;
    private Path jig;

    @BeforeEach
    void given() throws IOException {
        shop = Files.createDirectory(folder.resolve("shop"));
        for (Map.Entry<String, byte[]> file : ShopFiles.builtIn().files().entrySet()) {
            Files.write(shop.resolve(file.getKey()), file.getValue());
        }
        jig = Files.writeString(
                folder.resolve("scrap.csv"),
                "slot,x_mm,y_mm,rotation_deg,width_mm,height_mm,usable\nS,0,0,90,60,40,true\n");
    }

    private Outcome<RunSummary> trial(String... vary) throws IOException {
        GridRequest request = new GridRequest(
                "aluminium-tag",
                1,
                List.of(vary),
                jig,
                Optional.empty(),
                Optional.of("short-100"),
                6,
                Optional.of(shop),
                folder.resolve("trial"),
                Map.of());
        return new SettingsTrial(request, Progress.SILENT).run();
    }

    private static String text(Outcome<?> outcome) {
        return outcome.problems().stream()
                .filter(Problem::isError)
                .map(Problem::toString)
                .collect(Collectors.joining("\n"));
    }

    private Map<Integer, List<PlateMark>> marks() throws IOException {
        try (InputStream in = Files.newInputStream(folder.resolve("trial/plate-001.svg"))) {
            return PlateReader.read(in, IntStream.rangeClosed(1, 50).boxed().collect(Collectors.toSet()));
        }
    }

    @Test
    void eachSwatchIsAStepOfItsOwnOnOnePlate() throws IOException {
        Outcome<RunSummary> outcome = trial("speed=500:2000:4", "power=20:60:3");
        assertEquals("", text(outcome));
        assertEquals(1, outcome.result().orElseThrow().plates());
        // The labels are marks of the run, but no swatches; all of it is on one piece.
        assertEquals(12, outcome.result().orElseThrow().items());
        assertEquals(
                List.of(1), List.copyOf(outcome.result().orElseThrow().blanks().values()));
        assertEquals(
                4 + 3 + 12,
                marks().values().stream().filter(list -> !list.isEmpty()).count());
        List<PlateMark> last = marks().get(19);
        assertEquals(List.of(13), last.stream().map(PlateMark::step).toList());
        Box square = last.get(0).path().bounds();
        assertEquals(6, square.width(), 0.001);
        assertEquals(6, square.height(), 0.001);
    }

    @Test
    void moreStepsThanColoursAreTold() throws IOException {
        String told = "has 13 steps, and plate files have 8 colours, so that some steps share one";
        assertTrue(warnings(trial("speed=500:2000:4", "power=20:60:3")).contains(told));
    }

    @Test
    void asManyStepsAsColoursAreNot() throws IOException {
        assertFalse(warnings(trial("speed=500:2000:7")).contains("share one"));
    }

    @Test
    void aValueThatNoStepTakesIsToldWhereItWasAskedFor() throws IOException {
        Outcome<RunSummary> refused = trial("power=50:150:2");
        assertTrue(refused.result().isEmpty());
        assertEquals(
                "--vary: power_percent: 150 is out of range; write a number above 0, up to 100", warnings(refused));
    }

    @Test
    void whatIsSaidOfTheTrialsTablesNamesNoFileThatTheUserHasNot() throws IOException {
        Files.writeString(
                shop.resolve("lenses.csv"),
                Files.readString(shop.resolve("lenses.csv")).replace(",note", ",nots"));
        String told = warnings(trial("speed=500:2000:4", "power=20:60:3"));
        assertTrue(told.contains("--vary: warning: recipe 'settings-trial' has 13 steps"), told);
        assertFalse(told.contains("recipes.csv"), told);
        assertEquals(1, told.split("lenses\\.csv", -1).length - 1, told);
        assertTrue(told.contains("shop/lenses.csv:1"), told);
        String sheet = Files.readString(folder.resolve("trial/run-sheet.html"));
        assertTrue(sheet.contains("trial shop/recipes.csv:2"), sheet);
    }

    private static String warnings(Outcome<?> outcome) {
        return outcome.problems().stream().map(Problem::toString).collect(Collectors.joining("\n"));
    }

    @Test
    void swatchesFollowTheTurnOfTheSlotAroundItsCentre() throws IOException {
        trial("speed=500:2000:4", "power=20:60:3");
        // D3, right and below of the middle; turned by 90 degrees, above and right of it: 2 and 1.5 pitches of 7.5 mm.
        Box d3 = marks().get(19).get(0).path().bounds();
        assertEquals(50 + 1.5 * 7.5, (d3.minX() + d3.maxX()) / 2, 0.001);
        assertEquals(50 - 2 * 7.5, (d3.minY() + d3.maxY()) / 2, 0.001);
    }

    @Test
    void labelsAreSingleStrokesOfTheGentleStep() throws IOException {
        trial("speed=500:2000:4", "power=20:60:3");
        Map<Integer, List<PlateMark>> marks = marks();
        for (int item = 1; item <= 7; item++) {
            assertEquals(
                    Set.of(1), marks.get(item).stream().map(PlateMark::step).collect(Collectors.toSet()));
        }
        String plate = Files.readString(folder.resolve("trial/plate-001.svg"));
        String labels = plate.substring(plate.indexOf("<g id=\"step-1-label\">"), plate.indexOf("<g id=\"step-2-"));
        assertFalse(labels.contains("fill=\"#"), labels);
        String sheet = Files.readString(folder.resolve("trial/run-sheet.html"));
        assertTrue(sheet.contains("A 500") || sheet.contains("<span dir=\"auto\">500</span>"), sheet);
    }

    @Test
    void aTableToFillInStandsBesideTheRun() throws IOException {
        trial("speed=500:2000:4", "power=20:60:3");
        List<String> rows = Files.readAllLines(folder.resolve("trial-swatches.csv"));
        assertEquals("swatch,speed_mm_s,power_percent,colour,depth_mm,edge,verdict", rows.get(0));
        assertEquals("C2,1500,40,,,,", rows.get(7));
        assertEquals(13, rows.size());
    }

    @Test
    void theRunIsProvenLikeAnyOther() throws IOException {
        trial("spacing=0.02:0.08:4");
        Outcome<?> proof = new Verify(folder.resolve("trial")).run();
        assertEquals(List.of(), proof.problems());
    }

    @Test
    void whatIsWrongWithManySwatchesIsToldOnce() throws IOException {
        List<Problem> found = trial("speed=500:2000:4", "power=20:60:3").problems();
        // And that there are more steps than colours.
        assertEquals(2, found.size());
        assertTrue(
                found.get(1).toString().contains("step 2 (swatch_A1) and 11 more: lines 0.06 mm apart leave stripes"),
                found.toString());
    }

    @Test
    void onePieceIsLoadedOnce() throws IOException {
        RunSummary summary = trial("speed=500:2000:4", "power=20:60:3").result().orElseThrow();
        assertEquals(420 + 90 + 20 + 4.5, summary.handling(), 1e-9);
    }

    @Test
    void theChosenSwatchBecomesARecipeOfTheShop() throws IOException {
        trial("speed=500:2000:4", "power=20:60:3");
        String before = Files.readString(shop.resolve("recipes.csv"));
        Outcome<Recipe> adopted = new AdoptSwatch(folder.resolve("trial"), "C2", "bright", shop).run();
        assertEquals("", text(adopted));
        String after = Files.readString(shop.resolve("recipes.csv"));
        assertTrue(after.startsWith(before), "what stood there stays");
        Recipe recipe = ShopReader.read(ShopFiles.of(shop), new Problems())
                .orElseThrow()
                .recipes()
                .get("bright");
        assertEquals(
                List.of("engrave", "outline", "cut"),
                recipe.steps().stream().map(step -> step.process()).toList());
        assertEquals(1500, recipe.steps().get(0).speed());
        assertEquals(40, recipe.steps().get(0).powerPercent());
        assertEquals(0.06, recipe.steps().get(0).spacing());
        assertEquals("short-100", recipe.lens());
    }

    @Test
    void aNameIsNeverTakenTwiceNorAnUnknownSwatch() throws IOException {
        trial("speed=500:2000:4");
        byte[] before = Files.readAllBytes(shop.resolve("recipes.csv"));
        assertEquals(
                "--as: recipe 'slate' is there already; choose another name",
                text(new AdoptSwatch(folder.resolve("trial"), "C1", "slate", shop).run())
                        .replace("error: ", ""));
        assertTrue(text(new AdoptSwatch(folder.resolve("trial"), "C4", "new", shop).run())
                .contains("the trial has no swatch 'C4'"));
        assertEquals(new String(before, StandardCharsets.UTF_8), Files.readString(shop.resolve("recipes.csv")));
    }

    @Test
    void aTableWithOtherSeparatorsAndLineEndsKeepsThem() throws IOException {
        trial("speed=500:2000:4");
        Path recipes = shop.resolve("recipes.csv");
        String other = Files.readString(recipes)
                .replace(";", "")
                .replace(',', ';')
                .replace("\n", "\r\n")
                .stripTrailing();
        Files.writeString(recipes, other);
        assertEquals("", text(new AdoptSwatch(folder.resolve("trial"), "B1", "other", shop).run()));
        assertTrue(Files.readString(recipes).startsWith(other + "\r\nother;1;engrave;fill;40;1000;"));
    }

    @Test
    void wrongRequestsAreToldAndNothingIsWritten() throws IOException {
        assertTrue(text(trial("sped=1:2:3")).contains("'sped' is no parameter of a step; did you mean 'speed'?"));
        assertTrue(text(trial("passes=1:2:4")).contains("gives some value twice"));
        assertTrue(text(trial("speed=500:2000:20"))
                .contains("the swatches take 157.5 x 15 mm, which slot 'S' does not hold"));
        assertTrue(text(trial("power=50:150:3")).contains("150"));
        assertTrue(text(trial("speed=500:9000:3")).contains("more than the machine's 6000 mm/s"));
        assertFalse(Files.exists(folder.resolve("trial")));
        assertFalse(Files.exists(folder.resolve("trial-swatches.csv")));
    }
}
