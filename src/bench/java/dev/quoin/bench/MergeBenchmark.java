package dev.quoin.bench;

import dev.quoin.art.Artwork;
import dev.quoin.art.Columns;
import dev.quoin.art.SharedSizes;
import dev.quoin.art.Template;
import dev.quoin.art.TemplateCompiler;
import dev.quoin.drawing.SvgDrawing;
import dev.quoin.lettering.FontLibrary;
import dev.quoin.order.Item;
import dev.quoin.order.Row;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Recipe;
import dev.quoin.shop.ShopFiles;
import dev.quoin.shop.ShopReader;
import java.awt.Shape;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.apache.batik.anim.dom.SAXSVGDocumentFactory;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.GVTBuilder;
import org.apache.batik.bridge.UserAgentAdapter;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Items a second on one thread, from a row's cells to outlines, two texts an item: our template, compiled once, each text
 * fitted to its box; against Batik building each item's drawing anew, its texts at a given size. Names are real ones.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class MergeBenchmark {
    private static final Set<String> LATIN = Set.of("cs_CZ", "de", "en", "es", "fr", "hu", "it", "pl", "sv", "tr");
    private static final Place ROW = Place.of("order.csv", 2);

    /** Our template; for Batik the same without the boxes. */
    private static final String TEMPLATE = """
            <svg xmlns="http://www.w3.org/2000/svg" width="60mm" height="30mm" viewBox="0 0 60 30">
              <rect id="name-box" class="guide" x="4" y="4" width="52" height="10"/>
              <rect id="role-box" class="guide" x="4" y="16" width="52" height="6"/>
              <text class="engrave" data-fit="name-box" x="30" y="12" text-anchor="middle" font-size="6"
                    font-family="DejaVu Sans">${name}</text>
              <text class="engrave" data-fit="role-box" x="30" y="20" text-anchor="middle" font-size="4"
                    font-family="DejaVu Sans">${role}</text>
            </svg>
            """;

    private final List<Item> items = new ArrayList<>();
    private Template template;
    private Recipe recipe;
    private int next;

    /** Reads the names, compiles the template. */
    @Setup
    public void setUp() throws IOException {
        List<String> names = names();
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i) + " " + names.get((7 * i + 3) % names.size());
            items.add(new Item(i + 1, new Row(i, i + 2, List.of(name, "Deputy harbour master " + i)), 1));
        }
        Problems problems = new Problems();
        FontLibrary fonts = FontLibrary.open(List.of(), false, problems);
        Columns columns = new Columns(List.of("Name", "Role"), List.of("name", "role"), Map.of(), Optional.empty());
        recipe = ShopReader.read(ShopFiles.builtIn(), problems)
                .orElseThrow()
                .recipes()
                .get("steel-tag");
        template = SvgDrawing.read("tag.svg", TEMPLATE.getBytes(StandardCharsets.UTF_8), problems)
                .flatMap(drawing -> new TemplateCompiler(Set.of("engrave"), fonts, columns, Locale.ROOT)
                        .compile("tag.svg", drawing, problems))
                .orElseThrow();
    }

    /** Our way, all checks on. */
    @Benchmark
    public Artwork quoin() {
        return template.merge(nextItem(), ROW, recipe, SharedSizes.none(), new Problems())
                .orElseThrow();
    }

    /** Batik's way. */
    @Benchmark
    public Shape batik() throws IOException {
        List<String> cells = nextItem().row().cells();
        String svg = TEMPLATE.replace("${name}", cells.get(0)).replace("${role}", cells.get(1));
        UserAgentAdapter agent = new UserAgentAdapter();
        BridgeContext context = new BridgeContext(agent);
        Shape outline = new GVTBuilder()
                .build(
                        context,
                        new SAXSVGDocumentFactory(null).createDocument("file:///tag.svg", new StringReader(svg)))
                .getOutline();
        context.dispose();
        return outline;
    }

    private Item nextItem() {
        next = (next + 1) % items.size();
        return items.get(next);
    }

    private static List<String> names() throws IOException {
        try (InputStream in = MergeBenchmark.class.getResourceAsStream("/dev/quoin/names/names.tsv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .map(line -> line.split("\t", -1))
                    .filter(cells -> LATIN.contains(cells[0]))
                    .map(cells -> cells[2])
                    .toList();
        }
    }
}
