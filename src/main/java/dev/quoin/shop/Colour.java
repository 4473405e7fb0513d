package dev.quoin.shop;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A colour of sRGB.
 *
 * @param rgb {@code 0xRRGGBB}
 */
public record Colour(int rgb) {
    /** CSS 2.1, section 4.3.6. */
    private static final Map<String, Integer> NAMED = Map.ofEntries(
            Map.entry("maroon", 0x800000),
            Map.entry("red", 0xff0000),
            Map.entry("orange", 0xffa500),
            Map.entry("yellow", 0xffff00),
            Map.entry("olive", 0x808000),
            Map.entry("purple", 0x800080),
            Map.entry("fuchsia", 0xff00ff),
            Map.entry("white", 0xffffff),
            Map.entry("lime", 0x00ff00),
            Map.entry("green", 0x008000),
            Map.entry("navy", 0x000080),
            Map.entry("blue", 0x0000ff),
            Map.entry("aqua", 0x00ffff),
            Map.entry("teal", 0x008080),
            Map.entry("black", 0x000000),
            Map.entry("silver", 0xc0c0c0),
            Map.entry("gray", 0x808080));

    /** A colour as CSS writes it: {@code #c9cdd2}, {@code #ccd}, or a basic name. */
    public static Optional<Colour> parse(String css) {
        String text = css.toLowerCase(Locale.ROOT);
        if (text.matches("#[0-9a-f]{3}")) {
            return parse(text.replaceAll("([0-9a-f])", "$1$1"));
        }
        if (text.matches("#[0-9a-f]{6}")) {
            return Optional.of(new Colour(Integer.parseInt(text.substring(1), 16)));
        }
        return Optional.ofNullable(NAMED.get(text)).map(Colour::new);
    }

    /** {@code #c9cdd2}. */
    public String hex() {
        return String.format(Locale.ROOT, "#%06x", rgb);
    }

    /**
     * Whether white is easier to see on it than black: both contrast alike with a relative luminance of 0.179 (WCAG 2.1,
     * contrast ratio).
     */
    public boolean isDark() {
        double luminance =
                0.2126 * linear(rgb >> 16 & 255) + 0.7152 * linear(rgb >> 8 & 255) + 0.0722 * linear(rgb & 255);
        return luminance < 0.179;
    }

    /** WCAG 2.1, relative luminance. */
    private static double linear(int channel) {
        double value = channel / 255.0;
        return value <= 0.03928 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }
}
