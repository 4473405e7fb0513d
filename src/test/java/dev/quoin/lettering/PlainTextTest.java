package dev.quoin.lettering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Given plain Latin text, then setting it by pairs gives what shaping it whole gives, to the last digit. */
class PlainTextTest {
    static List<String> families() {
        return Fonts.BUNDLED.families().stream()
                .filter(family -> !family.startsWith("Stroke"))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("families")
    void realNamesAreTheSameBothWays(String family) {
        FontSet fonts = Fonts.of(family);
        for (String name : Names.all()) {
            assertEquals(Fonts.TYPESETTER.setShaped(name, fonts), Fonts.TYPESETTER.set(name, fonts), name);
        }
    }

    @Property(tries = 3000, seed = "2026")
    void randomTextIsTheSameBothWays(@ForAll("family") String family, @ForAll("latin") String text) {
        FontSet fonts = Fonts.of(family);
        assertEquals(Fonts.TYPESETTER.setShaped(text, fonts), Fonts.TYPESETTER.set(text, fonts));
    }

    @Test
    void everyPairOfCommonCharactersIsTheSameBothWays() {
        FontSet fonts = Fonts.of("DejaVu Serif");
        for (char a = ' '; a <= '~'; a++) {
            StringBuilder line = new StringBuilder();
            for (char b = ' '; b <= '~'; b++) {
                line.append(a).append(b);
            }
            String text = line.toString();
            assertEquals(Fonts.TYPESETTER.setShaped(text, fonts), Fonts.TYPESETTER.set(text, fonts), text);
        }
    }

    /** Without this the tests above would hold if no text were set by pairs at all. */
    @ParameterizedTest
    @MethodSource("families")
    void mostNamesInLatinAreSetByPairs(String family) {
        List<String> latin = List.of("de", "en", "fr", "cs_CZ", "pl", "tr", "es").stream()
                .flatMap(locale -> Names.BY_LOCALE.get(locale).stream())
                .toList();
        long plain = latin.stream().filter(name -> isPlain(name, family)).count();
        assertTrue(plain > 0.8 * latin.size(), () -> plain + " of " + latin.size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"Griffin", "fjord fi", "אב", "Zoe\u0308", "soft\u00ADhyphen", "a\tb", "Ελένη"})
    void textOutOfThePlainIsLeftToTheShaper(String text) {
        assertFalse(isPlain(text, "DejaVu Sans"));
    }

    @Provide
    Arbitrary<String> family() {
        return Arbitraries.of(families());
    }

    @Provide
    Arbitrary<String> latin() {
        Arbitrary<Character> any = Arbitraries.chars().range(' ', '\u024F');
        Arbitrary<Character> usual = Arbitraries.of("AVTWYaefilrtwy.,-' 0123479/fi\u2019()\u00E9\u0142"
                .chars()
                .mapToObj(c -> (char) c)
                .toList());
        return Arbitraries.frequencyOf(net.jqwik.api.Tuple.of(1, any), net.jqwik.api.Tuple.of(3, usual))
                .list()
                .ofMaxSize(24)
                .map(list -> list.stream().map(String::valueOf).collect(java.util.stream.Collectors.joining()));
    }

    private static boolean isPlain(String text, String family) {
        return ((OutlineTypeface) Fonts.of(family).first()).setPlain(text).isPresent();
    }
}
