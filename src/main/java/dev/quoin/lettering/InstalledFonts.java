package dev.quoin.lettering;

import dev.quoin.lettering.OutlineTypeface.OpenFont;
import java.awt.Font;
import java.awt.GraphicsEnvironment;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The fonts installed on this machine, as the platform lists them: four faces a family, regular and bold. */
final class InstalledFonts {
    private static final int UNITS = 2048;

    private InstalledFonts() {}

    static List<FontFace> faces() {
        List<FontFace> faces = new ArrayList<>();
        for (String family :
                GraphicsEnvironment.getLocalGraphicsEnvironment().getAvailableFontFamilyNames(Locale.ROOT)) {
            for (int style : new int[] {Font.PLAIN, Font.BOLD, Font.ITALIC, Font.BOLD | Font.ITALIC}) {
                OutlineTypeface typeface = new OutlineTypeface(() -> OpenFont.of(new Font(family, style, 1), UNITS, 0));
                faces.add(new FontFace(
                        family,
                        (style & Font.BOLD) != 0 ? 700 : 400,
                        (style & Font.ITALIC) != 0,
                        typeface,
                        Optional.empty()));
            }
        }
        return faces;
    }
}
