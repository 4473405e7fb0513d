package dev.quoin.optics;

import dev.quoin.geometry.Decimals;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Lens;
import dev.quoin.shop.Machine;
import dev.quoin.shop.Method;
import dev.quoin.shop.Recipe;
import dev.quoin.shop.Step;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds what a recipe is likely to do wrong on a machine and a lens. All problems stand at the recipe's place, name the
 * step, and give the figure that would do. Nothing is ever changed by itself.
 */
public final class RecipeCheck {
    /** No scanner places lines nearer than this, mm; less is a slip of the pen that would take days. */
    private static final double FINEST = 0.001;

    private final Machine machine;
    private final Lens lens;
    private final Problems problems;
    private final Map<List<String>, List<Step>> gathered = new LinkedHashMap<>();

    public RecipeCheck(Machine machine, Lens lens, Problems problems) {
        this.machine = machine;
        this.lens = lens;
        this.problems = problems;
    }

    /**
     * Everything that the recipe alone shows: figures outside the machine's limits (errors); pulses or lines that stand
     * apart, a cut before other steps, and another lens than the one on which it was proven (warnings).
     *
     * @param lenses by name, to look up the one that the recipe was proven on
     */
    public void check(Recipe recipe, Map<String, Lens> lenses) {
        int before = problems.errors();
        recipe.steps().forEach(step -> limits(recipe, step));
        if (problems.errors() > before) {
            // Overlaps of figures that cannot be set would only distract.
            return;
        }
        recipe.steps().forEach(step -> overlaps(recipe, step));
        cutsLast(recipe);
        Optional.ofNullable(lenses.get(recipe.lens()))
                .filter(proven -> proven.focalLength() != lens.focalLength())
                .ifPresent(proven -> recipe.steps().forEach(step -> otherLens(recipe, step, proven)));
        tell(recipe);
    }

    /**
     * A detail of the artwork that the beam is too thick for.
     *
     * @param smallest width of the thinnest part that the step treats, mm
     */
    public void detail(Recipe recipe, Step step, double smallest) {
        double spot = Exposure.of(machine, lens, step).spot();
        if (smallest < spot) {
            warn(
                    recipe,
                    step,
                    "its finest detail is " + mm(smallest) + " mm, the spot of lens '" + lens.name() + "' is "
                            + mm(spot) + " mm",
                    "make the detail as wide as the spot, or choose a lens with a focal length of "
                            + Decimals.text(Math.floor(lens.focalLength() * smallest / spot), 0) + " mm or less");
        }
        tell(recipe);
    }

    /** The diameter of the spot of the lens, mm. */
    public double spot() {
        return Beam.of(machine).spot(lens.focalLength());
    }

    /**
     * A detail of the artwork of which a step's inset leaves nothing.
     *
     * @param smallest width of the thinnest part that the step treats, mm
     */
    public void inset(Recipe recipe, Step step, double smallest) {
        if (smallest <= 2 * step.inset()) {
            warn(
                    recipe,
                    step,
                    "its finest detail is " + mm(smallest) + " mm wide, of which an inset of " + mm(step.inset())
                            + " mm leaves nothing",
                    "make the detail wider, or set inset_mm below " + mm(smallest / 2));
        }
        tell(recipe);
    }

    /** What each step does to the surface, a note each. */
    public void figures(Recipe recipe) {
        for (Step step : recipe.steps()) {
            String text = Exposure.of(machine, lens, step).describe();
            problems.note(recipe.place(), name(recipe, step) + "lens '" + lens.name() + "': " + text, "");
        }
    }

    /**
     * A surface that does not lie in the focus.
     *
     * @param what names the surface, such as {@code "blank 'disc'"}
     * @param offFocus how far above the focus it lies, less than 0 below it; mm
     */
    public void height(Recipe recipe, String what, double offFocus) {
        Beam beam = Beam.of(machine);
        double half = beam.rayleighLength(beam.spot(lens.focalLength()));
        double off = Math.abs(offFocus);
        if (off > half) {
            double ratio = 1 / (1 + Math.pow(off / half, 2));
            problems.warning(
                    recipe.place(),
                    what + " lies " + mm(off) + " mm " + (offFocus > 0 ? "above" : "below") + " the focus, lens '"
                            + lens.name() + "' has a depth of focus of " + mm(half)
                            + " mm each way: the fluence falls to " + Decimals.text(100 * ratio, 0) + " %",
                    "bring the surface into the focus");
        }
    }

    private void limits(Recipe recipe, Step step) {
        limit(recipe, step, "power", "%", step.powerPercent(), 0, 100);
        limit(recipe, step, "speed", "mm/s", step.speed(), 0, machine.maxSpeed());
        limit(
                recipe,
                step,
                "frequency",
                "kHz",
                step.frequencyKhz(),
                machine.minFrequencyKhz(),
                machine.maxFrequencyKhz());
        limit(recipe, step, "pulse width", "ns", step.pulseNs(), machine.minPulseNs(), machine.maxPulseNs());
        if (step.method() == Method.FILL && step.spacing() < FINEST) {
            error(
                    recipe,
                    step,
                    "spacing " + Decimals.text(step.spacing(), 6) + " mm is finer than a scanner can place lines",
                    "set spacing_mm to " + mm(FINEST) + " or more");
        }
    }

    private void limit(Recipe recipe, Step step, String what, String unit, double value, double least, double most) {
        if (value <= 0) {
            error(recipe, step, what + " is " + number(value) + " " + unit, "set it above 0");
        } else if (value > most) {
            error(
                    recipe,
                    step,
                    what + " " + number(value) + " " + unit + " is more than the machine's " + number(most) + " "
                            + unit,
                    "lower it");
        } else if (value < least) {
            error(
                    recipe,
                    step,
                    what + " " + number(value) + " " + unit + " is less than the machine's " + number(least) + " "
                            + unit,
                    "raise it");
        }
    }

    private void overlaps(Recipe recipe, Step step) {
        Exposure exposure = Exposure.of(machine, lens, step);
        String spot = "the spot of lens '" + lens.name() + "' is " + mm(exposure.spot()) + " mm";
        if (exposure.pulseOverlap() < 0) {
            warn(
                    recipe,
                    step,
                    "pulses " + mm(exposure.pulsePitch()) + " mm apart make a dotted line, " + spot,
                    pulsesTogether(step, exposure.spot()));
        }
        if (exposure.lineOverlap().orElse(0) < 0) {
            warn(
                    recipe,
                    step,
                    "lines " + mm(step.spacing()) + " mm apart leave stripes, " + spot,
                    "set spacing_mm to " + Decimals.text(Math.floor(exposure.spot() * 1000) / 1000, 3) + " or less");
        }
    }

    private String pulsesTogether(Step step, double spot) {
        double speed = Math.floor(spot * step.frequencyKhz() * 1e3);
        double frequency = Math.ceil(step.speed() / spot / 1e3);
        String slower = "lower the speed to " + number(speed) + " mm/s";
        return frequency > machine.maxFrequencyKhz()
                ? slower
                : slower + " or raise the frequency to " + number(frequency) + " kHz";
    }

    private void cutsLast(Recipe recipe) {
        for (int i = 0; i + 1 < recipe.steps().size(); i++) {
            Step step = recipe.steps().get(i);
            Step next = recipe.steps().get(i + 1);
            if (step.cuts() && !next.cuts()) {
                warn(
                        recipe,
                        step,
                        "it cuts before step " + next.number() + " (" + next.process()
                                + "), so that parts may have moved",
                        "put the cut last");
            }
        }
    }

    private void otherLens(Recipe recipe, Step step, Lens proven) {
        LensChange change = LensChange.of(machine, proven, lens, step);
        String speed = "speed " + Decimals.text(change.speed(), 0) + " mm/s ";
        String remedy = change.powerPercent() <= 100
                ? "power " + Decimals.text(change.powerPercent(), 1) + " % would restore the fluence, " + speed
                : "no power of this laser restores the fluence, " + speed + "restores ";
        warn(
                recipe,
                step,
                "proven on lens '" + proven.name() + "'; lens '" + lens.name() + "' has "
                        + Decimals.text(change.fluence(), 2) + " times the fluence",
                remedy + "the dose along the line: try it on scrap");
    }

    private void error(Recipe recipe, Step step, String message, String remedy) {
        problems.error(recipe.place(), name(recipe, step) + message, remedy);
    }

    private void warn(Recipe recipe, Step step, String message, String remedy) {
        gathered.computeIfAbsent(List.of(message, remedy), made -> new ArrayList<>())
                .add(step);
    }

    /** Tells what was gathered: once for all steps of which the same is to be said. */
    private void tell(Recipe recipe) {
        gathered.forEach((text, steps) -> {
            String others = steps.size() == 1 ? "" : " and " + (steps.size() - 1) + " more";
            String who = "recipe '" + recipe.name() + "', step " + steps.get(0).number() + " ("
                    + steps.get(0).process() + ")" + others + ": ";
            problems.warning(recipe.place(), who + text.get(0), text.get(1));
        });
        gathered.clear();
    }

    private static String name(Recipe recipe, Step step) {
        return "recipe '" + recipe.name() + "', step " + step.number() + " (" + step.process() + "): ";
    }

    private static String mm(double value) {
        return Decimals.mm(value);
    }

    private static String number(double value) {
        return Decimals.text(value, 3);
    }
}
