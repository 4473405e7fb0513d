package dev.quoin.cli;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Given errors in the user's files, then each gets one line that says where, what and what to do, and nothing is written. */
class BadInputTest {
    @TempDir
    Path folder;

    static Stream<BadJob> jobs() {
        return Stream.of(
                BadJob.of(
                        "an empty order",
                        job -> job.file("order.csv", ""),
                        "order.csv: empty; its first line must name the columns"),
                BadJob.of(
                        "an order of headers only",
                        job -> job.order("Name"),
                        "order.csv:1: an order without rows, only the names of its columns; add a row for each thing to mark"),
                BadJob.of(
                        "a column missing that the template uses",
                        job -> job.order("Nmae", "Ada"),
                        "tag.svg:3:1: '${name}' uses 'name', and the order has no such column; did you mean 'nmae'?"),
                BadJob.of(
                        "a template in per cent",
                        job -> job.file(
                                "tag.svg",
                                "<svg xmlns='http://www.w3.org/2000/svg' width='100%' height='100%' viewBox='0 0 50 25'><rect width='5' height='5'/></svg>"),
                        "tag.svg:1:1: the drawing has no real size: <svg> has height=\"100%\"; write a real size on the <svg> element, such as width=\"90mm\" height=\"50mm\"",
                        "tag.svg:1:1: the drawing has no real size: <svg> has width=\"100%\"; write a real size on the <svg> element, such as width=\"90mm\" height=\"50mm\""),
                BadJob.of(
                        "a template without size",
                        job -> job.file(
                                "tag.svg",
                                "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 50 25'><rect width='5' height='5'/></svg>"),
                        "tag.svg:1:1: the drawing has no real size: <svg> has no height; write a real size on the <svg> element, such as width=\"90mm\" height=\"50mm\"",
                        "tag.svg:1:1: the drawing has no real size: <svg> has no width; write a real size on the <svg> element, such as width=\"90mm\" height=\"50mm\""),
                BadJob.of(
                        "a template that is no XML",
                        job -> job.file("tag.svg", "tag"),
                        "tag.svg:1:1: not well-formed XML: Content is not allowed in prolog; open and save it in an SVG editor"),
                BadJob.of(
                        "a hole where the recipe does not cut",
                        job -> job.template("<circle class='cut' cx='10' cy='10' r='2'/>")
                                .set("recipe", "slate")
                                .set("blank", "slate-coaster-100"),
                        "tag.svg:2:1: <circle> is to be treated by 'cut', and the recipe slate has no step for it; choose another recipe, or make its class one of engrave, outline (or guide)"),
                BadJob.of(
                        "two slots of one name",
                        job -> job.jig("A1,0,0,0,50,25,yes", "A1,0,30,0,50,25,yes"),
                        "tray.csv:3:1: slot: 'A1' stands on line 2 already; rename one"),
                BadJob.of("a jig without slots", job -> job.jig(), "tray.csv:1: no slot; add a row for each"),
                BadJob.of(
                        "no usable slot",
                        job -> job.jig("A1,0,0,0,50,25,no"),
                        "tray: no slot is left for the group (recipe aluminium-tag, blank aluminium-50x25, jig tray); leave a slot out of --skip-slots, or mark one as usable",
                        "tray: note: slot A1 is marked as not usable, and left empty"),
                BadJob.of(
                        "an unknown lens",
                        job -> job.set("lens", "long-20"),
                        "job.properties:5: unknown lens 'long-20'; did you mean 'long-200'?"),
                BadJob.with(
                        "an unknown recipe and an unknown lens",
                        "--recipe slat --lens long-20",
                        "--lens: unknown lens 'long-20'; did you mean 'long-200'?",
                        "--recipe: unknown recipe 'slat'; did you mean 'slate'?"),
                BadJob.of(
                        "an unknown recipe",
                        job -> job.set("recipe", "aluminum-tag"),
                        "job.properties:3: unknown recipe 'aluminum-tag'; did you mean 'aluminium-tag'?"),
                BadJob.of(
                        "an unknown blank",
                        job -> job.set("blank", "brass"),
                        "job.properties:4: unknown blank 'brass'; known: steel-round-32, steel-40x24, aluminium-50x25, leather-fob-70x28, bottle-coated-500, slate-coaster-100"),
                BadJob.of(
                        "an unknown font family",
                        job -> job.template(JobFolder.text("${name}").replace("DejaVu Sans", "DejaVu Sanz")),
                        "tag.svg:3:1: unknown font family 'DejaVu Sanz'; did you mean 'DejaVu Sans'?"),
                BadJob.of(
                        "a font family unlike any",
                        job -> job.template(JobFolder.text("${name}").replace("DejaVu Sans", "Times")),
                        "tag.svg:3:1: unknown font family 'Times'; known: Barlow, Dancing Script, DejaVu Sans, DejaVu Sans Condensed, DejaVu Sans Mono, DejaVu Serif, DejaVu Serif Condensed, Stroke Sans, Stroke Script, Stroke Serif; for others give --fonts with their folder, or --system-fonts"),
                BadJob.of(
                        "an unknown key",
                        job -> job.set("tempalte", "tag.svg"),
                        "job.properties:5: unknown key 'tempalte'; did you mean 'template'?"),
                BadJob.of(
                        "a line without a key",
                        job -> job.file("job.properties", "template\n"),
                        "job.properties:1: 'template' is no setting; write key=value",
                        "order.csv: no jig is chosen; give --jig, or set it in job.properties",
                        "order.csv: no recipe is chosen; give --recipe, or set it in job.properties",
                        "order.csv: no template is chosen; give --template, or set it in job.properties"),
                BadJob.of(
                        "an unknown column",
                        job -> job.set("quantity-column", "Nane"),
                        "job.properties:5: quantity-column: the order has no column 'Nane'; did you mean 'Name'?"),
                BadJob.of(
                        "unknown columns to group and order by",
                        job -> job.set("group-by", "Town").set("order-by", "Nam"),
                        "job.properties:5: group-by: the order has no column 'Town'; known: Name",
                        "job.properties:6: order-by: the order has no column 'Nam'; did you mean 'Name'?"),
                BadJob.of(
                        "a flag that is neither",
                        job -> job.set("split-steps", "yes"),
                        "job.properties:5: split-steps: 'yes' is neither true nor false; write one of the two"),
                BadJob.of(
                        "a date that no calendar has",
                        job -> job.set("date", "2026-02-31"),
                        "job.properties:5: date: '2026-02-31' is not a date; write year, month and day, such as 2026-03-05"),
                BadJob.of(
                        "a template larger than the field",
                        job -> job.template("<rect x='-100' width='250' height='20'/>")
                                .jig("A1,0,0,0,400,400,yes"),
                        "tray: no usable slot holds every item of the group (recipe aluminium-tag, blank aluminium-50x25, jig tray) within reach of the lens long-200 (190 mm square); use a lens with a larger field, a smaller template or another jig",
                        "tray: warning: slot A1 is out of reach of the lens long-200 for some item of the group (recipe aluminium-tag, blank aluminium-50x25, jig tray), and left empty; use a lens with a larger field, or --jig-centre"),
                BadJob.of(
                        "ink outside the pocket",
                        job -> job.template("<rect x='20' width='40' height='20'/>"),
                        "order.csv:2: its ink stands out of every usable pocket of the jig tray, by 10 mm at the right (template tag.svg); use a smaller template or a jig with larger pockets",
                        "order.csv:3: its ink stands out of every usable pocket of the jig tray, by 10 mm at the right (template tag.svg); use a smaller template or a jig with larger pockets"),
                BadJob.of(
                        "ink in the corners of a round pocket",
                        job -> job.template("<rect x='15' y='2.5' width='20' height='20'/>")
                                .file("round.svg", """
                                        <svg xmlns="http://www.w3.org/2000/svg" width="60mm" height="60mm" viewBox="0 0 60 60">
                                          <circle class="pocket" id="A1" cx="30" cy="30" r="12"/>
                                        </svg>
                                        """)
                                .set("jig", "round.svg"),
                        "order.csv:2: its ink stands out of every usable pocket of the jig round (template tag.svg); use a smaller template or a jig with larger pockets",
                        "order.csv:3: its ink stands out of every usable pocket of the jig round (template tag.svg); use a smaller template or a jig with larger pockets"),
                BadJob.of(
                        "a value that is empty where it is used",
                        job -> job.order("Name,Town", "Ada,London", "  ,Arlington"),
                        "order.csv:3:1: Name: name is empty, and the template uses it; fill it in, or permit it: ${name!}"),
                BadJob.of(
                        "a character that no font has",
                        job -> job.order("Name", "Ada", "\uD80C\uDC00"),
                        "order.csv:3:1: Name: no glyph for U+13000 EGYPTIAN HIEROGLYPH A001 \"\ud80c\udc00\" in DejaVu Sans; add a font that has it to the folder of fonts and name it in font-family, or change the text"),
                BadJob.of(
                        "a text too long for its box",
                        job -> job.order(
                                "Town,Name",
                                "London,Ada",
                                "Arlington,Grace Brewster Murray Hopper of the United States Navy, retired"
                                        .replace(", retired", " (retired)")),
                        "order.csv:3:2: Name: 'Grace Brewster Murray Hopper of the United States Navy (retired)' is too long for its box: capitals would be 0.88 mm high, and 2 mm is the least; shorten it or allow two lines"),
                BadJob.of(
                        "a row with too few cells",
                        job -> job.order("Name,Town", "Ada,London", "Grace"),
                        "order.csv:3: 1 cell where the header row has 2; add what is missing"),
                BadJob.of(
                        "a quantity that is none",
                        job -> job.order("Name,Number", "Ada,two").set("quantity-column", "Number"),
                        "order.csv:2:2: Number: 'two' is no whole number; write a number from 0 to 10000, or leave the cell empty for 1"),
                BadJob.of(
                        "a template that a row names and that is not there",
                        job -> job.order("Name,Drawing", "Ada,tga.svg", "Grace,")
                                .set("template-column", "Drawing"),
                        "order.csv:2:2: there is no template 'tga.svg'; check its name"),
                BadJob.of(
                        "a recipe that a row names and the shop lacks",
                        job -> job.order("Name,Metal", "Ada,aluminium", "Grace,aluminium")
                                .set("recipe-column", "Metal"),
                        "order.csv:2:2: unknown recipe 'aluminium'; known: steel-tag, steel-fine, aluminium-tag, leather-fob, coated-bottle, slate",
                        "order.csv:3:2: unknown recipe 'aluminium'; known: steel-tag, steel-fine, aluminium-tag, leather-fob, coated-bottle, slate"),
                BadJob.of(
                        "several errors in several files",
                        job -> job.order("Name,Town", "Ada,London", "Grace", ",Bath")
                                .set("tempalte", "tag.svg")
                                .set("lens", "short")
                                .template(JobFolder.text("${name}") + "<image href='x.png' width='5' height='5'/>"),
                        "job.properties:5: unknown key 'tempalte'; did you mean 'template'?",
                        "job.properties:6: unknown lens 'short'; known: short-100, long-200",
                        "order.csv:3: 1 cell where the header row has 2; add what is missing",
                        "tag.svg:4:1: <image> is a raster picture, which cannot be marked; trace it into paths first"),
                BadJob.of(
                        "no template",
                        job -> job.set("template", ""),
                        "--template: no template is chosen; give --template, or set it in job.properties"),
                BadJob.of(
                        "a jig centre that is none",
                        job -> job.set("jig-centre", "here"),
                        "job.properties:5: jig-centre: 'here' is no point; write x and y in mm, such as 95,95"),
                BadJob.of(
                        "a separator that is none",
                        job -> job.set("separator", "x"),
                        "job.properties:5: separator: 'x' does not separate cells; give , or ; or tab or |"),
                BadJob.of(
                        "a locale that is none",
                        job -> job.set("locale", "x y"),
                        "job.properties:5: locale: 'x y' is no language tag; write one such as en-GB, de or cs-CZ"),
                BadJob.of(
                        "a language by its name",
                        job -> job.set("locale", "deutsch"),
                        "job.properties:5: locale: 'deutsch' is no language tag; write one such as en-GB, de or cs-CZ"),
                BadJob.of(
                        "a shop with a table missing",
                        job -> job.file("shop/lenses.csv", "lens,field_mm\n").set("shop", "shop"),
                        "shop/lenses.csv:1: no column 'focal_length_mm'; add it",
                        "shop/lenses.csv:1: no column 'focus_distance_mm'; add it",
                        "shop/lenses.csv:1: no column 'margin_mm'; add it",
                        "shop/machine.csv: missing; add it, with the columns setting,value",
                        "shop/recipes.csv: missing; add it, with the columns recipe,step,process,method,power_percent,speed_mm_s,frequency_khz,pulse_ns,spacing_mm,angle_deg,turn_deg,pattern,passes,lens"));
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void endsWithStatus1AndWritesNothing(BadJob job) throws Exception {
        job.check(folder, ExitStatus.BAD_INPUT);
    }
}
