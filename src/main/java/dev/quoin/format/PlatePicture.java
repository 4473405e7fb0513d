package dev.quoin.format;

import dev.quoin.art.Mark;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.FillRule;
import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.Placement;
import dev.quoin.shop.Colour;
import dev.quoin.shop.Method;
import dev.quoin.shop.Step;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * A plate as a picture, PNG, to be looked at before it is marked: the field, its pockets outlined, those that hold an item
 * in the blank's colour, and the marks in black or white, whichever stands out more. What each process marks is drawn
 * once, however many steps repeat it. The same plate gives the same bytes in the same Java runtime, which packs them.
 */
public final class PlatePicture implements PlateFormat {
    private static final double PIXELS_PER_MM = 8;
    private static final int MOST_PIXELS = 2000;
    private static final Colour UNKNOWN = new Colour(0xd9d9d9);
    private static final Color GROUND = Color.WHITE;
    private static final Color POCKET = new Color(0x808080);
    /** Pixels. */
    private static final float LINE = 1.25f;

    private final double field;
    private final Colour blank;
    private final List<Placement> slots;
    private final int side;

    /**
     * Pictures of one jig in a field.
     *
     * @param field its side, mm
     * @param colour the blank's, as CSS writes it; light grey if empty or not known
     * @param slots of the jig, filled or not
     */
    public PlatePicture(double field, String colour, Collection<Placement> slots) {
        this.field = field;
        this.blank = Colour.parse(colour).orElse(UNKNOWN);
        this.slots = List.copyOf(slots);
        this.side = (int) Math.min(MOST_PIXELS, Math.ceil(field * PIXELS_PER_MM));
    }

    @Override
    public void write(OutputStream out, List<Step> steps, List<LoadedItem> items) throws IOException {
        try (MemoryCacheImageOutputStream png = new MemoryCacheImageOutputStream(out)) {
            ImageIO.write(draw(steps, items), "png", png);
        }
    }

    private BufferedImage draw(List<Step> steps, List<LoadedItem> items) {
        BufferedImage picture = new BufferedImage(side, side, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = picture.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.setStroke(new BasicStroke(LINE, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        graphics.setColor(GROUND);
        graphics.fillRect(0, 0, side, side);
        drawPockets(graphics, items);
        graphics.setColor(blank.isDark() ? Color.WHITE : Color.BLACK);
        Set<String> drawn = new HashSet<>();
        for (Step step : steps) {
            if (drawn.add(step.process() + " " + step.method())) {
                items.forEach(item -> drawMarks(graphics, step, item));
            }
        }
        graphics.dispose();
        return picture;
    }

    private void drawPockets(Graphics2D graphics, List<LoadedItem> items) {
        graphics.setColor(new Color(blank.rgb()));
        for (LoadedItem item : items) {
            graphics.fill(pocket(item.placement()));
        }
        graphics.setColor(POCKET);
        slots.forEach(slot -> graphics.draw(pocket(slot)));
    }

    private Shape pocket(Placement slot) {
        return slot.slot().pocket().transform(toPicture(slot)).toShape(FillRule.EVEN_ODD);
    }

    private void drawMarks(Graphics2D graphics, Step step, LoadedItem item) {
        Affine move = toPicture(item.placement());
        for (Mark mark : item.marks(step)) {
            if (step.method() == Method.FOLLOW) {
                graphics.draw(mark.path().transform(move).toShape(FillRule.NON_ZERO));
            } else {
                graphics.fill(mark.area()
                        .transform(move)
                        .outline()
                        .toShape(mark.area().rule()));
            }
        }
    }

    /** From an item's own mm to pixels, y down. */
    private Affine toPicture(Placement slot) {
        double scale = side / field;
        return slot.pose().then(new Affine(scale, 0, 0, -scale, side / 2.0, side / 2.0));
    }
}
