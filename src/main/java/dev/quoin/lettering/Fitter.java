package dev.quoin.lettering;

import dev.quoin.drawing.TextAnchor;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Area;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Sets a text as large as its space allows. Its ink decides, not the advances of its letters.
 *
 * <ol>
 *   <li>Of all ways to break it into lines, the one that gives the largest size is taken; of equal ones that of the
 *       fewest lines, then the narrowest, which is the best balanced.
 *   <li>Only if that is under the least cap height, letters are made narrower, as little as brings them to that height.
 *   <li>If that is not enough either, it is too long.
 * </ol>
 *
 * <p>Baselines lie 1.2 font sizes apart. Line breaks in the text are kept if the request allows as many lines, else they
 * count as spaces. A text that shows nothing fits as an empty path. Safe for use by several threads.
 */
public final class Fitter {
    /** Sizes that differ by less than this part are equal. */
    private static final double SAME = 1e-9;

    private static final int HALVINGS = 32;

    private static final int MOST_SPACES = 200;

    private final Typesetter typesetter;
    private final Map<SpaceKey, FitSpace> spaces = new ConcurrentHashMap<>();

    public Fitter(Typesetter typesetter) {
        this.typesetter = typesetter;
    }

    /** Fits the text; see the class for the rules. */
    public FitResult fit(String text, FontSet fonts, FitRequest request) {
        FitSpace space = space(request);
        LineBreaker breaks = LineBreaker.of(text, request.mostLines());
        if (breaks.size() == 0) {
            return new Fitted(Path.EMPTY, request.leastCapHeight(), List.of(), 1, fonts.strokes());
        }
        BlockSearch search = new BlockSearch(breaks, typesetter, fonts, space.isRectangle());
        List<TextBlock> blocks = search.blocks(request.mostLines());
        if (!search.missing().isEmpty()) {
            return new MissingCharacters(search.missing(), fonts.families());
        }
        return best(blocks, space, request);
    }

    private static FitResult best(List<TextBlock> blocks, FitSpace space, FitRequest request) {
        TextBlock first = blocks.get(0);
        if (first.isBlank()) {
            return new Fitted(
                    Path.EMPTY,
                    request.leastCapHeight(),
                    first.texts(),
                    1,
                    first.lines().get(0).strokes());
        }
        double capHeight = first.capHeight();
        double least = request.leastCapHeight() / capHeight;
        double most = request.greatestCapHeight().orElse(Double.POSITIVE_INFINITY) / capHeight;
        List<Trial> trials = new ArrayList<>();
        for (TextBlock block : blocks) {
            trials.add(new Trial(block, 1, Math.min(most, space.largest(block, 1))));
        }
        Trial best = largest(trials);
        if (best.size() >= least * (1 - SAME)) {
            return best.fitted(space, request);
        }
        return squeezed(blocks, space, request, least);
    }

    private static FitResult squeezed(List<TextBlock> blocks, FitSpace space, FitRequest request, double least) {
        List<Trial> narrowest = new ArrayList<>();
        List<Trial> squeezed = new ArrayList<>();
        for (TextBlock block : blocks) {
            Trial trial = new Trial(block, request.leastSqueeze(), space.largest(block, request.leastSqueeze()));
            narrowest.add(trial);
            if (trial.size() >= least) {
                squeezed.add(new Trial(block, widest(block, space, request.leastSqueeze(), least), least));
            }
        }
        return squeezed.stream()
                .reduce((a, b) -> b.squeeze() > a.squeeze() + SAME ? b : a)
                .map(trial -> (FitResult) trial.fitted(space, request))
                .orElseGet(() ->
                        new TooLong(largest(narrowest).size() * blocks.get(0).capHeight()));
    }

    /** The greatest squeeze factor at which the block still fits at this size, by halving. */
    private static double widest(TextBlock block, FitSpace space, double narrow, double size) {
        double fits = narrow;
        double over = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (fits + over) / 2;
            if (space.largest(block, middle) >= size) {
                fits = middle;
            } else {
                over = middle;
            }
        }
        return fits;
    }

    /** The largest; of equal ones the first. */
    private static Trial largest(List<Trial> trials) {
        return trials.stream()
                .reduce((a, b) -> b.size() > a.size() * (1 + SAME) ? b : a)
                .orElseThrow();
    }

    /** The space, made ready once for all texts of a template. */
    private FitSpace space(FitRequest request) {
        if (spaces.size() > MOST_SPACES) {
            spaces.clear();
        }
        SpaceKey key = new SpaceKey(request.space(), request.inset(), request.anchor(), request.align());
        return spaces.computeIfAbsent(key, SpaceKey::open);
    }

    /** What decides the space; sizes and lines do not. */
    private record SpaceKey(Area area, double inset, TextAnchor anchor, VerticalAlign align) {
        FitSpace open() {
            return RectangleSpace.of(area, inset, anchor, align)
                    .orElseGet(() -> new ShapeSpace(area, inset, anchor, align));
        }
    }

    /** A block at a size, mm, and a squeeze. */
    private record Trial(TextBlock block, double squeeze, double size) {
        Fitted fitted(FitSpace space, FitRequest request) {
            Point origin = space.origin(block, squeeze, size);
            Path outline =
                    block.outline(request.anchor(), squeeze, new Affine(size, 0, 0, size, origin.x(), origin.y()));
            return new Fitted(
                    outline,
                    size * block.capHeight(),
                    block.texts(),
                    squeeze,
                    block.lines().get(0).strokes());
        }
    }
}
