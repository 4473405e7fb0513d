package dev.quoin.verify;

import dev.quoin.art.Mark;
import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.Placement;
import dev.quoin.plate.Wrap;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Method;
import dev.quoin.shop.Step;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import javax.xml.stream.XMLStreamException;
import org.locationtech.jts.geom.Geometry;

/**
 * The strips of each round piece together against its drawing: read back from the plate files and laid flat, they cover
 * what the drawing covers, and nothing else.
 */
public final class RoundCheck {
    /** Two files' rounding, and lines in place of curves, spread over a surface seen at a slant; mm. */
    private static final double TOLERANCE = 0.02;

    private static final String REMEDY = "do not mark this plate; prepare the run again";

    private final Path folder;
    private final Map<Integer, ItemClaim> items;
    private final Map<Integer, List<PlateClaim>> files;
    private final Function<PlateClaim, Fixture> fixtures;
    private final boolean hatched;
    private final Problems problems;

    /**
     * Sets up.
     *
     * @param folder the run's, whose listed files are proven unchanged
     * @param hatched whether fill steps are lines
     */
    public RoundCheck(
            Path folder, RunClaims claims, Function<PlateClaim, Fixture> fixtures, boolean hatched, Problems problems) {
        this.folder = folder;
        this.items = claims.byNumber();
        this.files = claims.filesByPlate();
        this.fixtures = fixtures;
        this.hatched = hatched;
        this.problems = problems;
    }

    /** A strip of a plate as it is on the disk. */
    private record Strip(Wrap wrap, ItemShapes shapes) {}

    /** Checks an item against its drawing, laid flat. */
    public void check(LoadedItem drawn) throws IOException {
        ItemClaim item = items.get(drawn.item());
        List<PlateClaim> own = files.get(item.plate());
        List<Strip> strips = new ArrayList<>();
        for (PlateClaim file : own) {
            strips.add(read(file, item));
        }
        for (Step step : fixtures.apply(own.get(0)).recipe().steps()) {
            if (!isSame(step, drawn, strips)) {
                problems.error(
                        Place.of(own.get(0).file()),
                        "the strips of item " + item.item() + " together are not its drawing in step " + step.number()
                                + " (" + step.process() + ")",
                        REMEDY);
            }
        }
    }

    private boolean isSame(Step step, LoadedItem drawn, List<Strip> strips) {
        Unrolled flat = new Unrolled(step.method());
        for (Mark mark : drawn.marks(step)) {
            boolean fills = step.method() == Method.FILL;
            flat.add(fills ? mark.area().outline() : mark.path(), mark.area().rule());
        }
        boolean lines = hatched && step.method() == Method.FILL;
        Unrolled marked = new Unrolled(lines ? Method.FOLLOW : step.method());
        for (Strip strip : strips) {
            for (dev.quoin.geometry.Path path : strip.shapes().paths(step.number(), drawn.item())) {
                if (lines) {
                    marked.addLines(path, strip.wrap());
                } else {
                    marked.add(path, strip.wrap());
                }
            }
        }
        return covers(flat.all(), marked.all()) && (lines || covers(marked.all(), flat.all()));
    }

    private static boolean covers(Geometry all, Geometry part) {
        return part.isEmpty() || all.buffer(TOLERANCE).covers(part);
    }

    private Strip read(PlateClaim file, ItemClaim item) throws IOException {
        Fixture fixture = fixtures.apply(file);
        Placement placement = fixture.placements().get(item.slot());
        ItemShapes shapes = new ItemShapes(Map.of(item.item(), placement));
        try (InputStream in = new BufferedInputStream(Files.newInputStream(folder.resolve(file.file())))) {
            PlateXml.read(in, shapes);
        } catch (XMLStreamException e) {
            throw new IOException(file.file() + " cannot be read", e);
        }
        return new Strip(
                new Wrap(
                        fixture.round().orElseThrow().piece(),
                        file.stand().band().orElseThrow()),
                shapes);
    }
}
