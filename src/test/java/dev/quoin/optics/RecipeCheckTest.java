package dev.quoin.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Lens;
import dev.quoin.shop.Machine;
import dev.quoin.shop.Recipe;
import dev.quoin.shop.Step;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/**
 * What a recipe is warned of. The beam (1000 nm, M2 1, 10 mm) has a spot of 4 x 0.001 x 160 / (10 pi) = 0.02037 mm on the
 * lens of 160 mm, and a Rayleigh length of pi 0.02037^2 / 0.004 = 0.32595 mm.
 */
class RecipeCheckTest {
    private static final Machine MACHINE = Given.machine(20, 1000, 10, 1);
    private static final Lens LENS = Given.lens("middle", 160);
    private static final Lens SHORT = Given.lens("short", 80);

    private static List<String> told(Consumer<RecipeCheck> use) {
        Problems problems = new Problems();
        use.accept(new RecipeCheck(MACHINE, LENS, problems));
        return problems.sorted().stream().map(Problem::toString).toList();
    }

    private static List<String> told(Recipe recipe) {
        return told(check -> check.check(recipe, Map.of("middle", LENS, "short", SHORT)));
    }

    @Test
    void aSoundRecipeIsNotWarnedOf() {
        Step engrave = Given.fill(50, 800, 40, 100, 0.02);
        Step cut = Given.follow(2, "cut", 90, 200, 20, 100);
        assertEquals(List.of(), told(Given.recipe("middle", engrave, cut)));
    }

    @Test
    void pulsesApart() {
        // 1200 mm/s at 40 kHz: 0.03 mm. 0.02037 mm x 40 kHz = 814.8 mm/s; 1200 / 0.02037 = 58.9 kHz.
        assertEquals(
                List.of(
                        "recipes.csv:4: warning: recipe 'tin', step 1 (outline): pulses 0.03 mm apart make a dotted line, "
                                + "the spot of lens 'middle' is 0.02 mm; lower the speed to 814 mm/s or raise the frequency to 59 kHz"),
                told(Given.recipe("", Given.follow(50, 1200, 40, 100))));
    }

    @Test
    void noFrequencyIsNamedThatTheMachineDoesNotHave() {
        // 4000 mm/s would need 197 kHz.
        assertEquals(
                List.of(
                        "recipes.csv:4: warning: recipe 'tin', step 1 (outline): pulses 0.1 mm apart make a dotted line, "
                                + "the spot of lens 'middle' is 0.02 mm; lower the speed to 814 mm/s"),
                told(Given.recipe("", Given.follow(50, 4000, 40, 100))));
    }

    @Test
    void linesApart() {
        assertEquals(
                List.of("recipes.csv:4: warning: recipe 'tin', step 1 (engrave): lines 0.05 mm apart leave stripes, "
                        + "the spot of lens 'middle' is 0.02 mm; set spacing_mm to 0.02 or less"),
                told(Given.recipe("", Given.fill(50, 800, 40, 100, 0.05))));
    }

    @Test
    void figuresOutsideTheMachinesLimitsAreErrors() {
        assertEquals(
                List.of(
                        "recipes.csv:4: recipe 'tin', step 1 (outline): frequency 10 kHz is less than the machine's 20 kHz; "
                                + "raise it",
                        "recipes.csv:4: recipe 'tin', step 1 (outline): pulse width 250 ns is more than the machine's 200 ns; "
                                + "lower it",
                        "recipes.csv:4: recipe 'tin', step 1 (outline): speed 6000 mm/s is more than the machine's 5000 mm/s; "
                                + "lower it"),
                told(Given.recipe("", Given.follow(50, 6000, 10, 250))));
    }

    @Test
    void aSlipOfThePenInTheSpacingIsAnError() {
        assertEquals(
                List.of(
                        "recipes.csv:4: recipe 'tin', step 1 (engrave): spacing 0.00002 mm is finer than a scanner can place "
                                + "lines; set spacing_mm to 0.001 or more"),
                told(Given.recipe("", Given.fill(50, 800, 40, 100, 0.00002))));
    }

    @Test
    void aCutBeforeAnotherStep() {
        assertEquals(
                List.of(
                        "recipes.csv:4: warning: recipe 'tin', step 1 (cut): it cuts before step 2 (outline), so that parts "
                                + "may have moved; put the cut last"),
                told(Given.recipe(
                        "", Given.follow(1, "cut", 50, 800, 40, 100), Given.follow(2, "outline", 50, 800, 40, 100))));
    }

    @Test
    void provenOnAnotherLens() {
        // Half the focal length: the spot is half as wide, so this lens has a quarter of the fluence, and at 200 mm/s
        // instead of 400 the dose along the line of before.
        assertEquals(
                List.of(
                        "recipes.csv:4: warning: recipe 'tin', step 1 (outline): proven on lens 'short'; lens 'middle' has "
                                + "0.25 times the fluence; power 80 % would restore the fluence, speed 200 mm/s the dose along the "
                                + "line: try it on scrap"),
                told(Given.recipe("short", Given.follow(20, 400, 40, 100))));
    }

    @Test
    void moreThanTheLaserHas() {
        assertEquals(
                List.of(
                        "recipes.csv:4: warning: recipe 'tin', step 1 (outline): proven on lens 'short'; lens 'middle' has "
                                + "0.25 times the fluence; no power of this laser restores the fluence, speed 200 mm/s restores the "
                                + "dose along the line: try it on scrap"),
                told(Given.recipe("short", Given.follow(60, 400, 40, 100))));
    }

    @Test
    void aDetailThinnerThanTheSpot() {
        Step step = Given.follow(50, 800, 40, 100);
        Recipe recipe = Given.recipe("", step);
        // 160 mm x 0.015 / 0.02037 = 117.8 mm.
        assertEquals(
                List.of(
                        "recipes.csv:4: warning: recipe 'tin', step 1 (outline): its finest detail is 0.015 mm, the spot of "
                                + "lens 'middle' is 0.02 mm; make the detail as wide as the spot, or choose a lens with a focal "
                                + "length of 117 mm or less"),
                told(check -> check.detail(recipe, step, 0.015)));
        assertEquals(List.of(), told(check -> check.detail(recipe, step, 0.021)));
    }

    @Test
    void aBlankOutOfFocus() {
        Recipe recipe = Given.recipe("", Given.follow(50, 800, 40, 100));
        // 1 / (1 + (0.65190 / 0.32595)^2) = 20 %.
        assertEquals(
                List.of(
                        "recipes.csv:4: warning: blank 'disc' lies 0.652 mm above the focus, lens 'middle' has a depth of "
                                + "focus of 0.326 mm each way: the fluence falls to 20 %; bring the surface into the focus"),
                told(check -> check.height(recipe, "blank 'disc'", 0.6519)));
        assertEquals(List.of(), told(check -> check.height(recipe, "blank 'disc'", -0.3)));
    }
}
