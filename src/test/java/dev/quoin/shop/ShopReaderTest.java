package dev.quoin.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShopReaderTest {
    private static final Map<String, String> SMALL = Map.of(
            "lenses.csv",
            "lens,field_mm,focal_length_mm,focus_distance_mm,margin_mm,note\nwide,200,290,340,5,\n",
            "machine.csv",
            """
            setting,value,unit,note
            power_w,50,W,
            wavelength_nm,1064,nm,
            beam_diameter_mm,7,mm,
            m2,1.4,,
            laser_class,4,,
            max_speed_mm_s,6000,mm/s,
            min_frequency_khz,1,kHz,
            max_frequency_khz,1000,kHz,
            min_pulse_ns,4,ns,
            max_pulse_ns,250,ns,
            jump_speed_mm_s,5000,mm/s,
            jump_settle_us,350,us,
            laser_on_us,60,us,
            laser_off_us,120,µs,
            mark_settle_us,140,us,
            corner_us,90,us,
            load_s,4.5,s,
            plate_s,20,s,
            setup_s,420,,
            """,
            "recipes.csv",
            """
            recipe,step,process,method,power_percent,speed_mm_s,frequency_khz,pulse_ns,spacing_mm,angle_deg,turn_deg,pattern,passes,lens,note,inset_mm,edge,material
            tag,1,engrave,fill,90,1400,60,200,0.05,45,90,regions,3,wide,first,0.01,last,steel
            tag,2,cut,follow,100,500,45.5,200,,,,,120,,,,,
            """,
            "blanks.csv",
            "blank,material,width_mm,height_mm,thickness_mm,colour,note\nround,steel,32,32,,#c9cdd2,\n",
            "materials.csv",
            "material,may_release,advice,source\nsteel,fume,run extraction,a source\n");

    @Test
    void theBuiltInShopHasNoProblem() throws IOException {
        ShopFiles files = ShopFiles.builtIn();
        Problems problems = new Problems();
        Shop shop = ShopReader.read(files, problems).orElseThrow(() -> new AssertionError(told(problems)));
        assertEquals(List.of(), told(problems));
        assertTrue(files.isBuiltIn());
        assertEquals(Set.of("engrave", "outline", "cut"), shop.processes());
        assertEquals("4", shop.machine().laserClass());
        for (Recipe recipe : shop.recipes().values()) {
            assertTrue(shop.lenses().containsKey(recipe.lens()), recipe.name());
            assertTrue(shop.materials().containsKey(recipe.material()), recipe.name());
            List<Step> steps = recipe.steps();
            for (Step step : steps) {
                boolean last = step.number() == steps.size();
                assertTrue(!step.process().equals("cut") || last, recipe.name() + " cuts before its end");
                assertTrue(step.speed() <= shop.machine().maxSpeed(), recipe.name());
            }
        }
    }

    @Test
    void theBuiltInFiguresSayThatTheyAreInvented() throws IOException {
        Shop shop = ShopReader.read(ShopFiles.builtIn(), new Problems()).orElseThrow();
        shop.lenses().values().forEach(lens -> assertTrue(lens.note().startsWith("Invented example"), lens.name()));
        shop.blanks().values().forEach(blank -> assertTrue(blank.note().startsWith("Invented example"), blank.name()));
        shop.recipes()
                .values()
                .forEach(recipe -> recipe.steps()
                        .forEach(step -> assertTrue(step.note().startsWith("Invented example"), recipe.name())));
    }

    @Test
    void noAdviceEverCallsAnythingSafe() throws IOException {
        String text = new String(ShopFiles.builtIn().files().get(ShopFiles.MATERIALS), StandardCharsets.UTF_8);
        assertFalse(text.toLowerCase(Locale.ROOT).matches("(?s).*(harmless|no hazard|safe[^t]).*"), text);
    }

    @Test
    void aWholeShop() {
        Shop shop = ShopReader.read(files(SMALL), new Problems()).orElseThrow();
        assertEquals(Map.of("wide", new Lens("wide", 200, 290, 340, 5, "")), shop.lenses());
        assertEquals(
                new Machine(
                        50,
                        1064,
                        7,
                        1.4,
                        "4",
                        6000,
                        1,
                        1000,
                        4,
                        250,
                        5000,
                        350e-6,
                        60e-6,
                        120e-6,
                        140e-6,
                        90e-6,
                        4.5,
                        20,
                        420,
                        0,
                        0,
                        FieldMirror.NONE,
                        0),
                shop.machine());
        assertEquals(
                new Recipe(
                        "tag",
                        List.of(
                                new Step(
                                        1,
                                        "engrave",
                                        Method.FILL,
                                        90,
                                        1400,
                                        60,
                                        200,
                                        0.05,
                                        45,
                                        90,
                                        Pattern.REGIONS,
                                        3,
                                        0.01,
                                        EdgePass.LAST,
                                        "first"),
                                new Step(
                                        2,
                                        "cut",
                                        Method.FOLLOW,
                                        100,
                                        500,
                                        45.5,
                                        200,
                                        0,
                                        0,
                                        0,
                                        Pattern.LINES,
                                        120,
                                        0,
                                        EdgePass.NONE,
                                        "")),
                        "wide",
                        "steel",
                        Place.of("shop/recipes.csv", 2)),
                shop.recipes().get("tag"));
        assertEquals(Map.of("round", new Blank("round", "steel", 32, 32, 0, "#c9cdd2", "")), shop.blanks());
        assertEquals(Map.of("steel", new Material("steel", "fume", "run extraction", "a source")), shop.materials());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            lenses.csv   | 200,290        | '200,290 '        | ''
            lenses.csv   | 200,290        | 'wide,290'        | 2:2: field_mm: 'wide' is no number; write a number above 0
            lenses.csv   | 200,290        | '0,290'           | 2:2: field_mm: 0 is out of range; write a number above 0
            lenses.csv   | 200,290        | '200,'            | 2:3: focal_length_mm: empty; write a number above 0
            lenses.csv   | 340,5          | '340,100'         | 2:5: margin_mm: on both sides it leaves nothing of the field; write less than half of field_mm
            lenses.csv   | wide,          | ','               | 2:1: lens: empty; write a name
            lenses.csv   | ,margin_mm     | ',margin'         | 1: no column 'margin_mm'; add it
            machine.csv  | power_w        | 'powr_w'          | 2:1: setting: 'powr_w' is not known; did you mean 'power_w'?
            machine.csv  | m2,1.4         | 'm2,0.9'          | 5:2: value: 0.9 is out of range; write a number of at least 1
            machine.csv  | 50,W           | 50,kW             | 2:3: unit: 'kW' where power_w is in W; convert the value to W
            machine.csv  | 'm2,1.4,,'     | 'm2,1.4,mm,'      | 5:3: unit: 'mm' where m2 has none; leave it empty
            machine.csv  | class,4        | class,IV          | 6:2: value: 'IV' is no laser class; write the one on the machine's label, such as 4
            machine.csv  | min_pulse_ns,4 | min_pulse_ns,300  | : min_pulse_ns is more than max_pulse_ns; correct one of them
            machine.csv  | corner_us      | laser_on_us       | 17:1: setting: 'laser_on_us' stands on line 14 already; rename one
            recipes.csv  | fill,90        | fill,101          | 2:5: power_percent: 101 is out of range; write a number above 0, up to 100
            recipes.csv  | '45.5,200'     | '"45,5",200'      | 3:7: frequency_khz: '45,5' is no number; write a point: 45.5
            recipes.csv  | '0.05,45'      | ',45'             | 2:9: spacing_mm: empty; write a number above 0
            recipes.csv  | '0.05,45'      | '0,45'            | 2:9: spacing_mm: 0 is out of range; write a number above 0
            recipes.csv  | tag,2          | tag,3             | 3:2: step: '3' where step 2 of 'tag' is due; number the steps 1, 2, 3 and so on in the order in which they run
            recipes.csv  | cut,follow     | cut,trace         | 3:4: method: 'trace' is not known; write fill or follow
            recipes.csv  | regions        | spirals           | 2:12: pattern: 'spirals' is not known; write lines or regions
            recipes.csv  | ',120,'        | ',0,'             | 3:13: passes: '0' does not fit; write a whole number from 1 to 100000
            recipes.csv  | 3,wide         | 3,wid             | 2:14: lens: no 'wid' is known; did you mean 'wide'?
            recipes.csv  | last,steel     | last,tin          | 2:18: material: no 'tin' is known; known: steel
            recipes.csv  | cut,follow     | guide,follow      | 3:3: process: 'guide' is never marked; choose another word
            recipes.csv  | cut,follow     | cut-2,follow      | 3:3: process: 'cut-2' ends like a numbered id; leave the number out
            recipes.csv  | cut,follow     | cut out,follow    | 3:3: process: 'cut out' is no word; use letters, digits, '-' and '_', a letter first
            blanks.csv   | round,steel    | round,steal       | 2:2: material: no 'steal' is known; did you mean 'steel'?
            blanks.csv   | '32,,'         | '32,-1,'          | 2:5: thickness_mm: -1 is out of range; write a number of at least 0
            blanks.csv   | #c9cdd2        | url(x)            | 2:6: colour: 'url(x)' is no colour; write one like #c9cdd2, or a CSS colour name
            """)
    void eachSlipIsToldWithItsPlace(String file, String from, String to, String problem) {
        Map<String, String> texts = new LinkedHashMap<>(SMALL);
        assertTrue(texts.get(file).contains(from), from);
        texts.put(file, texts.get(file).replace(from, to));
        Problems problems = new Problems();
        boolean read = ShopReader.read(files(texts), problems).isPresent();
        List<String> errors = problems.sorted().stream()
                .filter(Problem::isError)
                .map(Problem::toString)
                .toList();
        assertEquals(problem == null || problem.isEmpty(), read, errors.toString());
        if (!read) {
            String place = problem.startsWith(":") ? "" : ":";
            assertTrue(errors.contains("shop/" + file + place + problem), errors.toString());
        }
    }

    @Test
    void anotherLensInALaterStepIsAnError() {
        Map<String, String> texts = new LinkedHashMap<>(SMALL);
        texts.put("lenses.csv", SMALL.get("lenses.csv") + "close,100,160,182,4,\n");
        texts.put("recipes.csv", SMALL.get("recipes.csv").replace(",120,,", ",120,close,"));
        assertEquals(
                List.of("shop/recipes.csv:3:14: lens: 'close' where an earlier step of 'tag' has 'wide'; "
                        + "write one lens for all its steps"),
                problems(texts));
    }

    @Test
    void oneNameTwiceIsAnError() {
        Map<String, String> texts = new LinkedHashMap<>(SMALL);
        texts.put("lenses.csv", SMALL.get("lenses.csv") + "wide,100,160,182,4,\n");
        assertEquals(
                List.of("shop/lenses.csv:3:1: lens: 'wide' stands on line 2 already; rename one"), problems(texts));
    }

    @Test
    void aMissingSettingIsAnErrorAndAnOptionalOneIsNot() {
        Map<String, String> texts = new LinkedHashMap<>(SMALL);
        texts.put("machine.csv", SMALL.get("machine.csv").replace("load_s,4.5,s,\n", ""));
        assertEquals(List.of("shop/machine.csv: no setting 'load_s'; add a row for it"), problems(texts));
    }

    @Test
    void optionalSettings() {
        Map<String, String> texts = new LinkedHashMap<>(SMALL);
        texts.put(
                "machine.csv",
                SMALL.get("machine.csv") + "first_piece_s,90,s,\nfield_turn_deg,-90,deg,\nfield_mirror,Y,,\n");
        Machine machine =
                ShopReader.read(files(texts), new Problems()).orElseThrow().machine();
        assertEquals(90, machine.firstPiece());
        assertEquals(-90, machine.fieldTurn());
        assertEquals(FieldMirror.Y, machine.fieldMirror());
    }

    @Test
    void aColumnThatIsNotKnownIsAWarning() {
        Map<String, String> texts = new LinkedHashMap<>(SMALL);
        texts.put("blanks.csv", SMALL.get("blanks.csv").replace("colour", "color"));
        assertEquals(
                List.of(
                        "shop/blanks.csv:1:6: warning: column 'color' is not known and not read; did you mean 'colour'?"),
                problems(texts));
    }

    @Test
    void theSpacingOfAFollowStepIsAWarning() {
        Map<String, String> texts = new LinkedHashMap<>(SMALL);
        texts.put("recipes.csv", SMALL.get("recipes.csv").replace("45.5,200,,", "45.5,200,0.1,"));
        assertEquals(
                List.of(
                        "shop/recipes.csv:3:9: warning: spacing_mm: a follow step has none, so it is not used; leave it empty"),
                problems(texts));
    }

    @Test
    void missingTables() {
        Map<String, String> texts = new LinkedHashMap<>(SMALL);
        texts.keySet().removeAll(List.of("lenses.csv", "blanks.csv"));
        assertEquals(
                List.of("shop/lenses.csv: missing; add it, with the columns "
                        + "lens,field_mm,focal_length_mm,focus_distance_mm,margin_mm"),
                problems(texts));
    }

    @Test
    void headersAloneAreNoShop() {
        Map<String, String> texts = new LinkedHashMap<>(SMALL);
        texts.replaceAll((name, text) -> name.equals("machine.csv") ? text : text.substring(0, text.indexOf('\n') + 1));
        assertEquals(
                List.of(
                        "shop/lenses.csv:1: no lens; add a row for each",
                        "shop/recipes.csv:1: no recipe; add a row for each"),
                problems(texts));
    }

    @Test
    void aFolderIsReadAsItIs(@TempDir Path folder) throws IOException {
        Path shop = Files.createDirectory(folder.resolve("bench"));
        Files.writeString(shop.resolve("lenses.csv"), "x");
        Files.writeString(shop.resolve("notes.txt"), "x");
        ShopFiles files = ShopFiles.of(shop);
        assertEquals("bench", files.origin());
        assertEquals(Set.of("lenses.csv"), files.files().keySet());
        assertFalse(files.isBuiltIn());
        assertThrows(NoSuchFileException.class, () -> ShopFiles.of(folder.resolve("none")));
    }

    private static List<String> problems(Map<String, String> texts) {
        Problems problems = new Problems();
        ShopReader.read(files(texts), problems);
        return told(problems);
    }

    private static List<String> told(Problems problems) {
        return problems.sorted().stream().map(Problem::toString).toList();
    }

    private static ShopFiles files(Map<String, String> texts) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        texts.forEach((name, text) -> files.put(name, text.getBytes(StandardCharsets.UTF_8)));
        return new ShopFiles("shop", files);
    }
}
