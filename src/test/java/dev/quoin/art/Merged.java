package dev.quoin.art;

import dev.quoin.drawing.FontRequest;
import dev.quoin.drawing.SvgDrawing;
import dev.quoin.lettering.FontLibrary;
import dev.quoin.order.Item;
import dev.quoin.order.Row;
import dev.quoin.order.Variables;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Recipe;
import dev.quoin.shop.Shop;
import dev.quoin.shop.ShopFiles;
import dev.quoin.shop.ShopReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A template of one text, and what it says for a row: problems take its place where it says nothing. */
final class Merged {
    private static final Place ROW = Place.of("order.csv", 2);
    private static final FontLibrary FONTS = fonts();
    private static final Recipe RECIPE = recipe();

    private final List<String> headers;
    private final Map<Integer, DateForm> dates = new HashMap<>();
    private final Problems problems = new Problems();
    private Locale locale = Locale.ROOT;
    private Optional<Serial> serial = Optional.empty();

    private Merged(List<String> headers) {
        this.headers = headers;
    }

    static Merged columns(String... headers) {
        return new Merged(List.of(headers));
    }

    Merged locale(String tag) {
        locale = Locale.forLanguageTag(tag);
        return this;
    }

    Merged date(int column, String pattern) {
        dates.put(column, DateForm.of(pattern, locale).orElseThrow());
        return this;
    }

    Merged serial(Serial numbers) {
        serial = Optional.of(numbers);
        return this;
    }

    /** What the text {@code placeholder} says for the first item of a row of these cells. */
    String says(String placeholder, String... cells) {
        return says(placeholder, new Item(1, new Row(0, 2, List.of(cells)), 1));
    }

    String says(String placeholder, Item item) {
        Problems found = new Problems();
        Optional<Artwork> artwork = compile(text(placeholder), found)
                .flatMap(template -> template.merge(item, ROW, RECIPE, SharedSizes.none(), found));
        return artwork.map(art -> art.texts().get(0).text())
                .orElseGet(() -> found.sorted().get(0).toString());
    }

    Artwork art(Template template, SharedSizes sizes, String... cells) {
        Item item = new Item(1, new Row(0, 2, List.of(cells)), 1);
        return template.merge(item, ROW, RECIPE, sizes, problems).orElseThrow();
    }

    /** A template without errors. */
    Template compile(String svg) {
        Problems found = new Problems();
        return compile(svg, found)
                .orElseThrow(() -> new AssertionError(found.sorted().toString()));
    }

    /** The artwork of a row; nothing where there are problems. */
    Optional<Artwork> drawn(Template template, String... cells) {
        return drawn(template, new Problems(), cells);
    }

    Optional<Artwork> drawn(Template template, Problems found, String... cells) {
        Item item = new Item(1, new Row(0, 2, List.of(cells)), 1);
        return template.merge(item, ROW, RECIPE, SharedSizes.none(), found);
    }

    /** The height of a bundled font's capitals, ems. */
    static double capHeight(String family, int weight) {
        FontRequest request = new FontRequest(List.of(family), weight, false);
        return FONTS.select(request, ROW, new Problems()).orElseThrow().capHeight();
    }

    Optional<Template> compile(String svg, Problems found) {
        return SvgDrawing.read("tag.svg", svg.getBytes(StandardCharsets.UTF_8), found)
                .flatMap(drawing -> compile(drawing, found));
    }

    Optional<Template> compile(SvgDrawing drawing, Problems found) {
        List<String> variables = headers.stream().map(Variables::name).toList();
        Columns columns = new Columns(headers, variables, dates, serial);
        return new TemplateCompiler(Set.of("engrave"), FONTS, columns, locale).compile("tag.svg", drawing, found);
    }

    private static FontLibrary fonts() {
        try {
            return FontLibrary.open(List.of(), false, new Problems());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Recipe recipe() {
        try {
            Shop shop = ShopReader.read(ShopFiles.builtIn(), new Problems()).orElseThrow();
            return shop.recipes().get("steel-tag");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(String placeholder) {
        String escaped = placeholder.replace("&", "&amp;").replace("<", "&lt;");
        return """
                <svg xmlns="http://www.w3.org/2000/svg" width="200mm" height="20mm" viewBox="0 0 200 20">
                  <text class="engrave" x="2" y="12" font-size="5">%s</text>
                </svg>
                """.formatted(escaped);
    }
}
