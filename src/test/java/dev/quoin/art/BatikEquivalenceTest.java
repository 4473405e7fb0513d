package dev.quoin.art;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.drawing.SvgDrawing;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Polyline;
import dev.quoin.lettering.FontLibrary;
import dev.quoin.order.Item;
import dev.quoin.order.Row;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Recipe;
import dev.quoin.shop.Shop;
import dev.quoin.shop.ShopFiles;
import dev.quoin.shop.ShopReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/**
 * Our lettering against Batik's own text rendering (Batik 1.19) of the same drawing in the same font. Batik gets the
 * drawing in units of a thousandth of a millimetre, since it flattens paths to a hundredth of a unit. Letters that the
 * font kerns or joins are left out: Batik does neither. No arc is half a turn, which Batik widens (see PathData).
 */
class BatikEquivalenceTest {
    private static final Item ITEM = new Item(1, new Row(0, 2, List.of("x")), 1);
    private static final int FINER = 1000;
    private static final String PAGE =
            "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink'"
                    + " width='100mm' height='50mm' viewBox='0 0 %d %d'><g transform='scale(%d)' font-family='Barlow'>%s</g></svg>";

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<path id='p' d='M20 40A35 35 0 0 1 80 40' fill='none'/><text font-size='4'><textPath"
                        + " xlink:href='#p'>Minna Hull</textPath></text>",
                "<path id='p' d='M20 40A35 35 0 0 1 80 40' fill='none'/><text font-size='5'"
                        + " text-anchor='middle'><textPath xlink:href='#p' startOffset='50%'>Minna Hull</textPath></text>",
                "<path id='p' d='M10 20C30 -10 60 60 90 20' fill='none'/><text font-size='5'"
                        + " text-anchor='end'><textPath xlink:href='#p' startOffset='80'>Mill Hill</textPath></text>",
                "<path id='p' d='M10 40L40 10L90 30' fill='none'/><text font-size='4'><textPath"
                        + " xlink:href='#p' startOffset='10'>nun im Inn im Hull</textPath></text>",
                "<g transform='rotate(7)'><path id='p' d='M50 5A20 20 0 1 1 49.9 5Z' transform='translate(3 1)'"
                        + " fill='none'/><text font-size='3'><textPath xlink:href='#p' startOffset='12'>Minna Hull"
                        + "</textPath></text></g>"
            })
    void textOnAPathStandsWithin20Micrometres(String body) throws IOException {
        double distance = distance(ours(body), batik(body));
        assertTrue(distance < 0.02, body + " is off by " + distance);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<text x='10' y='20' font-size='5'>Minna Hull</text>",
                "<text x='50' y='20' font-size='6' text-anchor='middle'>Minna Hull</text>",
                "<text x='90' y='40' font-size='3' text-anchor='end'>nun im Inn</text>",
                "<text x='30' y='30' font-size='4' transform='rotate(20 30 30) scale(1 1.5)'>Mill</text>",
                "<text font-size='4'><tspan x='10' y='10'>Hill</tspan><tspan x='10' y='20'>Inn 12</tspan></text>"
            })
    void plainTextStandsWithin2Micrometres(String body) throws IOException {
        double distance = distance(ours(body), batik(body));
        assertTrue(distance < 0.002, body + " is off by " + distance);
    }

    @Test
    void aTextLongerThanItsPathIsAnErrorAndAFittedOneIsMadeSmaller() throws IOException {
        String path = "<path id='p' d='M10 20H30' fill='none'/><text font-size='6' %s><textPath xlink:href='#p'>"
                + "Hanno Hill</textPath></text>";
        Problems problems = new Problems();
        assertTrue(merge(String.format(path, ""), problems).isEmpty());
        assertTrue(problems.sorted().toString().contains("'Hanno Hill' is longer than its path"), problems.toString());
        Artwork fitted = merge(String.format(path, "data-fit='p' data-min-height='1'"), new Problems())
                .orElseThrow();
        double width = fitted.marks().get(0).path().bounds().width();
        assertTrue(width > 18.5 && width <= 20, "width " + width);
        problems = new Problems();
        assertTrue(merge(String.format(path, "data-min-height='4'"), problems).isEmpty());
        assertTrue(problems.sorted().toString().contains("is too long for its path"), problems.toString());
        Artwork narrow = merge(String.format(path, "data-min-height='4' data-squeeze='0.5'"), new Problems())
                .orElseThrow();
        assertEquals(4, narrow.texts().get(0).capHeight(), 1e-9);
        assertTrue(narrow.marks().get(0).path().bounds().width() <= 20);
    }

    @Test
    void onARingTextMayRunOverTheStartOfItsPath() throws IOException {
        String ring = "<circle id='p' cx='50' cy='25' r='20' fill='none'/><text font-size='4' text-anchor='middle'>"
                + "<textPath xlink:href='#p'>Hanno Hill</textPath></text>";
        var box =
                merge(ring, new Problems()).orElseThrow().marks().get(0).path().bounds();
        assertEquals(0, box.centre().y(), 0.5);
        assertTrue(box.minX() > 15, box.toString());
    }

    /** In mm, item coordinates. */
    private static Path ours(String body) throws IOException {
        Problems problems = new Problems();
        Artwork artwork = merge(body, problems).orElseThrow(() -> new AssertionError(problems.sorted()));
        Path.Builder all = Path.builder();
        artwork.marks().forEach(mark -> all.append(mark.path()));
        return all.build();
    }

    private static Path batik(String body) {
        String svg = String.format(Locale.ROOT, PAGE, 100 * FINER, 50 * FINER, FINER, finer(body))
                .replace("width='100mm' height='50mm'", "width='100000' height='50000'")
                .replace("transform='scale(" + FINER + ")' ", "");
        double mm = 1.0 / FINER;
        return BatikText.outline(svg, "Barlow-Regular.ttf")
                .transform(Affine.scale(mm, -mm).then(Affine.translate(-50, 25)));
    }

    /** The same with all lengths a thousand times as many units. */
    private static String finer(String body) {
        var matcher = java.util.regex.Pattern.compile("(font-size|x|y|startOffset|d|transform)='([^']*)'")
                .matcher(body);
        return matcher.replaceAll(found -> found.group(1) + "='" + finerValue(found.group(1), found.group(2)) + "'");
    }

    private static String finerValue(String name, String value) {
        if (value.endsWith("%")) {
            return value;
        }
        return switch (name) {
            case "d" ->
                times(value.replaceAll("A([0-9.]+) ([0-9.]+) 0 ([01]) ([01]) ", "A$1 $2 0 f$3 f$4 "))
                        .replaceAll(" 0 f([01])000 f([01])000 ", " 0 $1 $2 ")
                        .replaceAll(" 0 f([01]) f([01]) ", " 0 $1 $2 ");
            case "transform" ->
                value.startsWith("translate")
                        ? times(value)
                        : value.replaceAll("rotate\\(20 30 30\\)", "rotate(20 30000 30000)");
            default -> times(value);
        };
    }

    private static String times(String value) {
        return java.util.regex.Pattern.compile("(?<![f0-9.])-?[0-9]+(\\.[0-9]+)?")
                .matcher(value)
                .replaceAll(n -> n.group().equals("0") ? "0" : String.valueOf(Double.parseDouble(n.group()) * FINER));
    }

    private static Optional<Artwork> merge(String body, Problems problems) throws IOException {
        Shop shop = ShopReader.read(ShopFiles.builtIn(), problems).orElseThrow();
        Recipe recipe = shop.recipes().values().stream()
                .filter(r -> r.processes().contains("engrave"))
                .findFirst()
                .orElseThrow();
        byte[] svg = String.format(Locale.ROOT, PAGE, 100, 50, 1, body).getBytes(StandardCharsets.UTF_8);
        FontLibrary fonts = FontLibrary.open(List.of(), false, problems);
        TemplateCompiler compiler = new TemplateCompiler(
                shop.processes(),
                fonts,
                new Columns(List.of("Name"), List.of("name"), Map.of(), Optional.empty()),
                Locale.ROOT);
        return SvgDrawing.read("t.svg", svg, problems)
                .flatMap(drawing -> compiler.compile("t.svg", drawing, problems))
                .flatMap(template ->
                        template.merge(ITEM, Place.of("order.csv", 2), recipe, SharedSizes.none(), problems));
    }

    private static double distance(Path a, Path b) {
        Geometry one = lines(a);
        Geometry other = lines(b);
        return DiscreteHausdorffDistance.distance(one, other);
    }

    private static Geometry lines(Path path) {
        GeometryFactory factory = new GeometryFactory();
        List<LineString> lines = new ArrayList<>();
        for (Polyline line : path.flatten(1e-4)) {
            if (line.size() > 1) {
                Coordinate[] points = new Coordinate[line.size() + 1];
                for (int i = 0; i <= line.size(); i++) {
                    points[i] = new Coordinate(line.x(i % line.size()), line.y(i % line.size()));
                }
                lines.add(factory.createLineString(points));
            }
        }
        return factory.createMultiLineString(lines.toArray(LineString[]::new));
    }
}
