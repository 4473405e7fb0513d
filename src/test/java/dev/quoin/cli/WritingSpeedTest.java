package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Given a scan head's delays, then it writes about as many letters a second as heads of its kind are said to. The measure:
 * the 52 letters and 10 digits in a single-line typeface 1 mm high (SCANLAB glossary, "characters per second").
 *
 * <p>No data sheet with its delays could be looked up, so these are from memory, as is the band of 400 to 700 a second that
 * heads with an aperture of 10 mm reach in good quality: a tracking error of about 0.16 ms (waited out at the end of a mark
 * and in a reversal of direction, twice after a jump), marks at 2 m/s, jumps at 10 m/s.
 */
class WritingSpeedTest {
    private static final String CHARACTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789";

    @TempDir
    Path folder;

    @Test
    void singleLineLettersAreWrittenAsQuicklyAsHeadsOfTheKindWriteThem() throws IOException {
        JobFolder job = new JobFolder(folder)
                .template("""
                        <rect id="line" class="guide" x="-20" y="8" width="90" height="8" fill="none" stroke="black"/>
                        <text class="outline" data-fit="line" data-min-height="1" data-max-height="1"
                              x="25" y="12" text-anchor="middle" font-size="1" font-family="Stroke Sans">${name}</text>
                        """)
                .order("Name", CHARACTERS)
                .jig("A1,0,0,0,100,25,yes")
                .set("recipe", "lettering")
                .set("shop", "shop");
        Path shop = folder.resolve("job/shop");
        BuiltInShop.copyTo(shop, "recipes.csv", "lettering,1,outline,follow,30,2000,100,30,,,,,1,long-200,,,,\n");
        set(shop.resolve("machine.csv"), "jump_speed_mm_s", "10000");
        set(shop.resolve("machine.csv"), "jump_settle_us", "320");
        set(shop.resolve("machine.csv"), "laser_on_us", "0");
        set(shop.resolve("machine.csv"), "laser_off_us", "0");
        set(shop.resolve("machine.csv"), "mark_settle_us", "160");
        set(shop.resolve("machine.csv"), "corner_us", "160");

        QuoinRun run = job.prepare();

        assertEquals(0, run.status(), run.err().toString());
        double seconds = CsvText.read(job.run().resolve("plates.csv")).sum("marking_s");
        double perSecond = CHARACTERS.length() / seconds;
        assertTrue(perSecond > 400 && perSecond < 700, () -> perSecond + " characters a second");
    }

    private static void set(Path machine, String setting, String value) throws IOException {
        String text = Files.readString(machine);
        Files.writeString(
                machine,
                Pattern.compile("(?m)^" + setting + ",[^,]*").matcher(text).replaceFirst(setting + "," + value));
    }
}
