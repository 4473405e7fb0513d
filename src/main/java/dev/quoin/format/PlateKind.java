package dev.quoin.format;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The kinds of file that a plate can be written as. */
public enum PlateKind {
    SVG("svg") {
        @Override
        public PlateFormat inField(double field, boolean hatched) {
            return new PlateSvg(field, hatched);
        }
    },
    PDF("pdf") {
        @Override
        public PlateFormat inField(double field, boolean hatched) {
            return new PlatePdf(field, hatched);
        }
    },
    DXF("dxf") {
        @Override
        public PlateFormat inField(double field, boolean hatched) {
            return new PlateDxf(field, hatched);
        }
    };

    private final String word;

    PlateKind(String word) {
        this.word = word;
    }

    /** Its name in settings, and the ending of its files' names. */
    public String word() {
        return word;
    }

    /**
     * The writer of plates.
     *
     * @param field the side of their field, mm
     * @param hatched whether the marks of fill steps are the lines of a hatch, and not areas
     */
    public abstract PlateFormat inField(double field, boolean hatched);

    public static Optional<PlateKind> named(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(PlateKind::word).toList();
    }
}
