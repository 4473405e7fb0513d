package dev.quoin.job;

import dev.quoin.drawing.FontRequest;
import dev.quoin.drawing.SvgDrawing;
import dev.quoin.format.FieldSvg;
import dev.quoin.format.JigSvg;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Decimals;
import dev.quoin.lettering.FontLibrary;
import dev.quoin.lettering.FontSet;
import dev.quoin.plate.FieldPose;
import dev.quoin.plate.Placement;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.problem.Suggestion;
import dev.quoin.shop.Jig;
import dev.quoin.shop.JigDesign;
import dev.quoin.shop.Lens;
import dev.quoin.shop.Shop;
import dev.quoin.shop.ShopFiles;
import dev.quoin.shop.ShopReader;
import dev.quoin.shop.Slot;
import dev.quoin.store.LooseFiles;
import dev.quoin.table.TableWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Makes jigs, and the drawings that help to lay them true. Each method returns what it wrote: nothing after an error. */
public final class JigTools {
    private static final List<String> LABEL_FONT = List.of("sans-serif");
    private static final List<String> HEADER =
            List.of("slot", "x_mm", "y_mm", "rotation_deg", "width_mm", "height_mm", "usable");

    private final JobSettings settings;
    private final Problems problems;

    public JigTools(JobSettings settings, Problems problems) {
        this.settings = settings;
        this.problems = problems;
    }

    /**
     * Writes a jig's drawing and its table of slots.
     *
     * @throws IOException if they cannot be written, or stand there already
     */
    public List<Path> make(JigDesign design) throws IOException {
        if (!design.isSound(problems)) {
            return List.of();
        }
        if (!JigSvg.hasLabels(design)) {
            problems.note(
                    Place.of("jig"), "no room for labels below the pockets", "give larger --pitch-y and --margin");
        }
        FontSet font = FontLibrary.open(List.of(), false, problems)
                .select(new FontRequest(LABEL_FONT, 400, false), Place.of("jig"), problems)
                .orElseThrow();
        ByteArrayOutputStream drawing = new ByteArrayOutputStream();
        new JigSvg(font).write(drawing, design);
        String stem = settings.out().getFileName().toString().replaceFirst("(?i)\\.(svg|csv)$", "");
        Map<Path, byte[]> files = new LinkedHashMap<>();
        files.put(settings.out().resolveSibling(stem + ".svg"), drawing.toByteArray());
        files.put(settings.out().resolveSibling(stem + ".csv"), table(design));
        return write(files);
    }

    private static byte[] table(JigDesign design) throws IOException {
        StringBuilder text = new StringBuilder();
        TableWriter table = new TableWriter(text);
        table.row(HEADER);
        for (Slot slot : design.slots()) {
            table.row(List.of(
                    slot.id(),
                    Decimals.mm(slot.centre().x()),
                    Decimals.mm(slot.centre().y()),
                    "0",
                    Decimals.mm(slot.width()),
                    Decimals.mm(slot.height()),
                    "yes"));
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    /**
     * Writes the outlines of a jig and its pockets as they lie in the field, to be shown with the pointing beam. What the
     * lens does not reach is left out, with a note.
     *
     * @throws IOException if the jig cannot be read, or the file cannot be written or stands there already
     */
    public List<Path> outline(Path jigFile) throws IOException {
        if (!Files.isRegularFile(jigFile)) {
            throw new NoSuchFileException(jigFile.toString(), null, "there is no such jig; check its name");
        }
        byte[] bytes = Files.readAllBytes(jigFile);
        String name = jigFile.getFileName().toString();
        Optional<Shop> shop = shop();
        Optional<Lens> lens = shop.flatMap(this::lens);
        Optional<Jig> jig = JigShelf.read(name, bytes, problems)
                .flatMap(read -> shop.flatMap(
                        made -> JigStand.of(settings, made.machine(), problems).stand(read, problems)));
        if (problems.hasErrors() || lens.isEmpty() || jig.isEmpty()) {
            return List.of();
        }
        FieldPose pose = FieldPose.of(jig.get(), shop.get().machine());
        Map<String, dev.quoin.geometry.Path> outlines = new LinkedHashMap<>();
        outlines.put(
                "jig", dev.quoin.geometry.Path.of(frame(name, bytes, jig.get())).transform(pose.jigToField()));
        for (Placement placement : pose.place(jig.get())) {
            outlines.put(
                    "slot-" + placement.slot().id(), placement.slot().pocket().transform(placement.pose()));
        }
        outlines.entrySet().removeIf(outline -> !isReached(outline.getKey(), outline.getValue(), lens.get()));
        ByteArrayOutputStream drawing = new ByteArrayOutputStream();
        new FieldSvg(lens.get().field()).outlines(drawing, "alignment", outlines);
        return write(Map.of(settings.out(), drawing.toByteArray()));
    }

    /** The page of a drawing; the box around the pockets of a table. */
    private static Box frame(String name, byte[] bytes, Jig jig) {
        if (name.toLowerCase(Locale.ROOT).endsWith(".svg")) {
            return SvgDrawing.read(name, bytes, new Problems())
                    .map(drawing ->
                            Box.centred(drawing.page().width(), drawing.page().height()))
                    .orElse(Box.EMPTY);
        }
        return jig.slots().stream()
                .map(slot -> slot.pose().apply(Box.centred(slot.width(), slot.height())))
                .reduce(Box.EMPTY, Box::union);
    }

    private boolean isReached(String name, dev.quoin.geometry.Path outline, Lens lens) {
        boolean reached = Box.centred(lens.field(), lens.field()).contains(outline.bounds(), 0);
        if (!reached) {
            String what = name.equals("jig") ? "the jig's own outline" : "pocket " + name.substring("slot-".length());
            problems.note(
                    Place.of("jig"), what + " is not whole in the field of " + lens.name() + " and is left out", "");
        }
        return reached;
    }

    /**
     * Writes the arrow and the letter F that show how the field lies.
     *
     * @throws IOException if the file cannot be written or stands there already
     */
    public List<Path> arrow() throws IOException {
        Optional<Lens> lens = shop().flatMap(this::lens);
        if (lens.isEmpty()) {
            return List.of();
        }
        ByteArrayOutputStream drawing = new ByteArrayOutputStream();
        new FieldSvg(lens.get().field()).arrow(drawing);
        return write(Map.of(settings.out(), drawing.toByteArray()));
    }

    private Optional<Shop> shop() throws IOException {
        Optional<Path> folder = settings.path(JobKey.SHOP);
        return ShopReader.read(folder.isPresent() ? ShopFiles.of(folder.get()) : ShopFiles.builtIn(), problems);
    }

    private Optional<Lens> lens(Shop shop) {
        String name = settings.text(JobKey.LENS).orElse("");
        Optional<Lens> lens = Optional.ofNullable(shop.lenses().get(name));
        if (lens.isEmpty()) {
            problems.error(
                    settings.place(JobKey.LENS),
                    name.isEmpty() ? "no lens is given" : "unknown lens '" + name + "'",
                    Suggestion.remedy(name, shop.lenses().keySet()));
        }
        return lens;
    }

    private List<Path> write(Map<Path, byte[]> files) throws IOException {
        LooseFiles.write(files, settings.flag(JobKey.REPLACE));
        return List.copyOf(files.keySet());
    }
}
