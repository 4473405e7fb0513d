package dev.quoin.drawing;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Area;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Clip;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import dev.quoin.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.UnitProcessor;
import org.w3c.dom.Element;

/** Reads {@code image} elements: drawings of other files, scaled into their boxes. */
record PictureReader(Origins origins, Pictures pictures, Reporter reporter) {
    /** What an image shows, in its own user units (y down); nothing if there is an error, or it has no size. */
    List<DrawnShape> read(Element image, BridgeContext context) {
        String href = image.getAttributeNS(SvgHandler.XLINK, "href");
        if (!href.toLowerCase(Locale.ROOT).endsWith(".svg")) {
            reporter.error(image, "is a raster picture, which cannot be marked", "trace it into paths first");
            return List.of();
        }
        ArtFile file = pictures.find(href);
        if (file instanceof RefusedArt refused) {
            reporter.error(image, refused.message(), refused.remedy());
            return List.of();
        }
        Picture picture = pictures.picture((FoundArt) file);
        for (Problem problem : picture.problems()) {
            reporter.problems().add(problem);
        }
        if (picture.isFaulty()) {
            reporter.error(
                    image, "shows " + Troubles.quoted(href) + ", which cannot be marked", "correct that drawing");
            return List.of();
        }
        Optional<AspectRatio> ratio = AspectRatio.parse(image.getAttribute("preserveAspectRatio"));
        if (ratio.isEmpty()) {
            reporter.error(
                    image,
                    "has preserveAspectRatio=" + Troubles.quoted(image.getAttribute("preserveAspectRatio"))
                            + ", which is not understood",
                    "write it as xMidYMid meet");
        }
        Optional<Box> room = room(image, context);
        return ratio.isEmpty() || room.isEmpty()
                ? List.of()
                : laid(picture, ratio.get(), room.get(), origins.of(image));
    }

    private static List<DrawnShape> laid(
            Picture picture, AspectRatio ratio, Box room, dev.quoin.drawing.Element image) {
        Affine toRoom = Affine.scale(1, -1).then(ratio.lay(picture.box(), room));
        Clip edge = new Clip(new Area(Path.of(room), FillRule.NON_ZERO));
        List<DrawnShape> shapes = new ArrayList<>();
        for (DrawnShape shape : picture.shapes()) {
            shapes.add(shape.in(named(shape.element(), image), toRoom).through(edge));
        }
        return shapes;
    }

    /** An element of the picture, called by what it is in its file, and then by what stands around it here. */
    private static dev.quoin.drawing.Element named(dev.quoin.drawing.Element shape, dev.quoin.drawing.Element image) {
        List<Names> names = new ArrayList<>();
        // The ids of another file are none of this one's: nothing here can refer to them.
        names.add(new Names("", List.of()));
        names.addAll(shape.names());
        names.addAll(image.names());
        Map<String, VariableText> data =
                image.data("when").map(when -> Map.of("when", when)).orElse(Map.of());
        return new dev.quoin.drawing.Element(shape.tag(), shape.place(), List.copyOf(names), data, image.conditions());
    }

    /** Its box; nothing if it has no size. */
    private Optional<Box> room(Element image, BridgeContext context) {
        if (image.getAttribute("width").isBlank()
                || image.getAttribute("height").isBlank()) {
            reporter.error(image, "has no size", "give it a width and a height");
            return Optional.empty();
        }
        org.apache.batik.parser.UnitProcessor.Context units = UnitProcessor.createContext(context, image);
        String x = image.getAttribute("x").isBlank() ? "0" : image.getAttribute("x");
        String y = image.getAttribute("y").isBlank() ? "0" : image.getAttribute("y");
        double left = UnitProcessor.svgHorizontalCoordinateToUserSpace(x, "x", units);
        double top = UnitProcessor.svgVerticalCoordinateToUserSpace(y, "y", units);
        double width = UnitProcessor.svgHorizontalLengthToUserSpace(image.getAttribute("width"), "width", units);
        double height = UnitProcessor.svgVerticalLengthToUserSpace(image.getAttribute("height"), "height", units);
        return width > 0 && height > 0 ? Optional.of(new Box(left, top, left + width, top + height)) : Optional.empty();
    }
}
