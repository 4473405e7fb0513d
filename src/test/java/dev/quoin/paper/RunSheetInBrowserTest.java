package dev.quoin.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.browser.Chromium;
import dev.quoin.browser.Poppler;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The run sheet as a browser prints and shows it: Chromium lays it out, poppler reads the print. */
@Tag("browser")
class RunSheetInBrowserTest {
    private static final String LOCALES = "ar de en es_MX fr he ja th tr vi";

    @TempDir
    private Path folder;

    private Chromium browser;

    @BeforeEach
    void findBrowser() {
        browser = new Chromium(folder);
    }

    /** Sizes in points, 72 to the inch: A4 is 210 by 297 mm (ISO 216), Letter 8.5 by 11 in. */
    @ParameterizedTest
    @CsvSource({"A4, 595.28, 841.89", "letter, 612, 792"})
    void itPrintsOnBothPapersEachItemOnceInATableAndOnceInAPicture(String paper, double width, double height)
            throws Exception {
        List<PlateView> plates = plates(3, List.of("Ada Marsh", "Wilhelmina Oosterhuis"));
        Path pdf = browser.print(onPaper(sheet(plates), paper));
        Matcher points = Pattern.compile("Page size: +([0-9.]+) x ([0-9.]+)").matcher(Poppler.info(pdf));
        assertTrue(points.find());
        assertEquals(width, Double.parseDouble(points.group(1)), 1);
        assertEquals(height, Double.parseDouble(points.group(2)), 1);
        String all = String.join("\n", Poppler.text(pdf));
        for (int item = SampleSheet.FIRST_ITEM; item < SampleSheet.FIRST_ITEM + 3 * 17; item++) {
            assertEquals(2, all.split("\\b" + item + "\\b", -1).length - 1, "item " + item);
        }
    }

    @ParameterizedTest
    @CsvSource({"A4", "letter"})
    void aPlatesHeadStandsOnThePageOnWhichItsTableBegins(String paper) throws Exception {
        List<String> pages = Poppler.text(browser.print(onPaper(sheet(plates(3, List.of("Ada Marsh"))), paper)));
        for (int plate = 1; plate <= 3; plate++) {
            String file = String.format("plate-%03d.svg", plate);
            String header = "Text on the items of plate " + plate;
            String page = pages.stream()
                    .filter(text -> text.contains(header))
                    .findFirst()
                    .orElseThrow();
            assertTrue(page.contains(file), page);
            String table = page.substring(page.indexOf(header));
            assertTrue(table.split("5 March 2026", -1).length > 3, "three rows under the header: " + table);
        }
    }

    /** Names from npm @faker-js/faker 10.6.0 (MIT): the longest first and last name of ten locales. */
    @Test
    void theLongestNamesOfTenLocalesNeitherOverflowNorOverlap() throws Exception {
        String dom = browser.dom(measured(sheet(plates(1, longestNames()))));
        assertEquals("", found(dom), "what lies outside its place");
    }

    @Test
    void longNamesOfTheShopStayOnThePage() throws Exception {
        String name = "a-name-as-long-as-a-careless-shop-may-give-to-what-it-owns-"
                .repeat(2)
                .replace('-', '_');
        SlotView slot = SampleSheet.filled(name, 0, 0, 0, SampleSheet.ROUND, 7001, name);
        PlateView plain = SampleSheet.plate(1, List.of(new Change(Change.What.JIG, name, name)), List.of(slot));
        GroupView group = SampleSheet.group(name, name);
        PlateView plate = new PlateView(
                1,
                List.of(name + ".svg"),
                group,
                plain.changes(),
                1,
                plain.markingSeconds(),
                plain.handlingSeconds(),
                plain.totalSeconds(),
                600,
                plain.steps(),
                plain.slots(),
                plain.code(),
                List.of());
        SheetHead head = SampleSheet.head(name, List.of(plate), List.of(), List.of(new LeftOut(123456, name, name)));
        assertEquals("", found(browser.dom(measured(SampleSheet.html(head, List.of(plate))))));
    }

    @Test
    void slotsStandWhereTheirNumbersSay() throws Exception {
        List<SlotView> slots = new ArrayList<>();
        double[] turns = {0, 30, 90, 180};
        dev.quoin.geometry.Path flag = dev.quoin.geometry.Path.builder()
                .moveTo(-10, -6)
                .lineTo(12, -6)
                .lineTo(-10, 8)
                .close()
                .build();
        for (int i = 0; i < turns.length; i++) {
            slots.add(SampleSheet.filled("s" + i, 30 * i - 40, 12 * i - 9, turns[i], flag, 7001 + i, "x"));
        }
        PlateView plate = SampleSheet.plate(1, List.of(), slots);
        String script =
                "document.querySelectorAll('.pocket').forEach(p=>{var s=p.ownerSVGElement.getScreenCTM().inverse().multiply(p.getScreenCTM());"
                        + "var q=new DOMPoint(12,6).matrixTransform(s);"
                        + "out+='['+q.x.toFixed(3)+' '+(-q.y).toFixed(3)+']';});";
        String dom = browser.dom(withScript(sheet(List.of(plate)), script));
        StringBuilder expected = new StringBuilder();
        for (SlotView slot : slots) {
            // The tip (12, -6), turned anticlockwise by the rotation and moved to the centre.
            double a = Math.toRadians(slot.rotation());
            double x = slot.centre().x() + 12 * Math.cos(a) + 6 * Math.sin(a);
            double y = slot.centre().y() + 12 * Math.sin(a) - 6 * Math.cos(a);
            expected.append(String.format(java.util.Locale.ROOT, "[%.3f %.3f]", x, y));
        }
        assertEquals(expected.toString(), found(dom));
    }

    @Test
    void ticksSurviveAReloadAndTheLineToCopyNamesJustTheFailedItems() throws Exception {
        String script = "if(!sessionStorage.getItem('again')){sessionStorage.setItem('again','1');"
                + "['7003','7004','7009'].forEach(i=>document.querySelector('tr[data-item=\"'+i+'\"] [data-mark=failed]').click());"
                + "document.querySelector('tr[data-item=\"7005\"] [data-mark=done]').click();"
                + "document.querySelector('[data-check=\"0\"]').click();location.reload();}"
                + "out=document.querySelector('.redo input').value+'|'"
                + "+document.querySelectorAll('tr[data-state=done]').length+'|'"
                + "+document.querySelector('[data-check=\"0\"]').checked+'|'"
                + "+document.querySelector('.tools [role=status]').textContent;";
        String dom = browser.dom(withScript(sheet(plates(1, List.of("Ada"))), script));
        assertEquals("quoin reprint . --item 7003-7004,7009|1|true|1 done, 3 failed, 13 left", found(dom));
    }

    @Test
    void aPlatesLineSaysWhatIsDoneHowLongItTookAndWhatFailed() throws Exception {
        String line = "document.querySelector('#plate-2 .done input').value";
        String script = "out=" + line + "+'|';"
                + "['7020','7019','7030','7003'].forEach(i=>document.querySelector('tr[data-item=\"'+i+'\"] [data-mark=failed]').click());"
                + "out+=" + line + "+'|';"
                + "var now=Date.now;var clock=document.querySelector('#plate-2 .clock button');"
                + "clock.click();Date.now=()=>now()+3725000;clock.click();Date.now=now;"
                + "out+=" + line + "+'|';"
                + "['7020','7019','7030'].forEach(i=>document.querySelector('tr[data-item=\"'+i+'\"] [data-mark=done]').click());"
                + "out+=" + line + ";";
        String said = found(browser.dom(withScript(sheet(plates(2, List.of("Ada"))), script)));
        assertEquals(
                "quoin done . --plate 2|quoin done . --plate 2 --failed 7019-7020,7030|"
                        + "quoin done . --plate 2 --took 62:05 --failed 7019-7020,7030|"
                        + "quoin done . --plate 2 --took 62:05",
                said);
    }

    @Test
    void aFinishedPlatesLineStaysInTheFilterUntilItIsCopiedByKeyOrByButton() throws Exception {
        String shown = "out+=[...document.querySelectorAll('.done input')].filter(l=>l.offsetParent).length;";
        String script = "document.execCommand=()=>true;Object.defineProperty(navigator,'clipboard',{value:undefined});"
                + "document.querySelectorAll('[data-mark=done]').forEach(b=>b.click());"
                + "document.querySelector('.tools button').click();" + shown
                + "document.querySelector('#plate-1 .done input')"
                + ".dispatchEvent(new KeyboardEvent('keydown',{key:'Enter',bubbles:true}));" + shown
                + "document.querySelector('#plate-2 .done button').click();" + shown
                + "out+='|'+document.querySelector('.tools').textContent.includes('Copied: quoin done . --plate 2');";
        assertEquals("210|true", found(browser.dom(withScript(sheet(plates(2, List.of("Ada"))), script))));
    }

    @Test
    void theFilterShowsOnlyWhatIsLeft() throws Exception {
        String script = "document.querySelectorAll('[data-mark=done]').forEach((b,i)=>{if(i>1)b.click()});"
                + "document.querySelector('.tools button').click();"
                + "out=[...document.querySelectorAll('tr[data-item]')].filter(r=>r.offsetParent).length;";
        String dom = browser.dom(withScript(sheet(plates(1, List.of("Ada"))), script));
        assertEquals("2", found(dom));
    }

    @Test
    void anArrowGoesToTheNextBoxOfTheSameColumn() throws Exception {
        String script = "var b=document.querySelector('[data-mark=failed]');b.focus();"
                + "b.dispatchEvent(new KeyboardEvent('keydown',{key:'ArrowDown',bubbles:true}));"
                + "out=document.activeElement.getAttribute('aria-label');";
        String dom = browser.dom(withScript(sheet(plates(1, List.of("Ada"))), script));
        assertEquals("Item 7002 failed", found(dom));
    }

    private static String sheet(List<PlateView> plates) {
        return SampleSheet.html(
                SampleSheet.head("harbour", plates, SampleSheet.problems(), List.of(new LeftOut(14, "", "too long"))),
                plates);
    }

    private static List<PlateView> plates(int count, List<String> texts) {
        List<PlateView> plates = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            plates.add(SampleSheet.tray(i + 1, SampleSheet.FIRST_ITEM + 17 * i, texts));
        }
        return plates;
    }

    private static String onPaper(String html, String paper) {
        return html.replace("@page {", "@page { size: " + paper + ";");
    }

    /** Adds a script that leaves its finding in {@code out}. */
    private static String withScript(String html, String script) {
        return html.replace(
                "</body>",
                "<pre id=\"found\"></pre><script>var out='';" + script
                        + "document.getElementById('found').textContent=out;</script></body>");
    }

    /** Looks for text that leaves the page or its pocket, and for texts of one slot that cover each other. */
    private static String measured(String html) {
        return withScript(
                html,
                "var page=document.querySelector('main').getBoundingClientRect();"
                        + "document.querySelectorAll('main *').forEach(e=>{var r=e.getBoundingClientRect();"
                        + "if(r.width>1&&r.right>page.right+1)out+=' page:'+e.tagName+'.'+e.className;});"
                        + "document.querySelectorAll('.slot').forEach(s=>{"
                        + "var p=s.querySelector('.pocket').getBoundingClientRect();"
                        + "var t=[...s.querySelectorAll('text')];t.forEach((e,i)=>{var r=e.getBoundingClientRect();"
                        + "if(r.left<p.left||r.right>p.right||r.top<p.top||r.bottom>p.bottom)"
                        + "out+=' pocket:'+s.dataset.slot+':'+e.textContent;"
                        + "if(i&&t[i-1].getBBox().y+t[i-1].getBBox().height*0.8>e.getBBox().y+e.getBBox().height*0.35)"
                        + "out+=' over:'+s.dataset.slot+':'+e.textContent;});});");
    }

    private static String found(String dom) {
        Matcher found = Pattern.compile("<pre id=\"found\">([^<]*)</pre>").matcher(dom);
        assertTrue(found.find(), "the page's script ended");
        return found.group(1);
    }

    private static List<String> longestNames() throws IOException {
        Path names = Path.of(System.getProperty("quoin.cases", "none"), "names");
        Assumptions.assumeTrue(Files.isDirectory(names), "skipped: no names at " + names);
        List<String> longest = new ArrayList<>();
        for (String locale : LOCALES.split(" ")) {
            longest.add(
                    longest(names.resolve(locale + ".first.txt")) + " " + longest(names.resolve(locale + ".last.txt")));
        }
        longest.add("Anameofenormouslengthwithoutanyplaceatwhichalinecouldbebrokenwithouthyphens");
        return longest;
    }

    private static String longest(Path file) throws IOException {
        return Files.readAllLines(file).stream()
                .max(Comparator.comparingInt(String::length))
                .orElseThrow();
    }
}
