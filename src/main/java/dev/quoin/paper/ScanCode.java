package dev.quoin.paper;

import dev.quoin.code.CodeKind;
import dev.quoin.code.CodeMaker;
import dev.quoin.code.MadeCode;
import dev.quoin.geometry.Path;
import java.util.Optional;

/**
 * A Data Matrix on paper, so that a scanner at the machine can call a plate's file.
 *
 * @param content what a scanner reads
 * @param outline of its dark modules around the origin, mm on paper, y up
 * @param size of the square that it stands in, its quiet zone included, mm
 */
public record ScanCode(String content, Path outline, double size) {
    /** A module that hand scanners and cameras still read from plain paper, mm; common practice. */
    static final double LEAST_MODULE = 0.5;
    /** A short code fills this square, mm; beyond the largest no room is left beside it. */
    private static final double USUAL = 20;

    private static final double LARGEST = 34;

    /** The code that says this; none where it would need too much of the page. */
    public static Optional<ScanCode> of(String content) {
        return made(content, USUAL)
                .filter(code -> code.moduleMm() >= LEAST_MODULE)
                .map(code -> new ScanCode(content, code.area().outline(), USUAL))
                .or(() -> larger(content));
    }

    private static Optional<ScanCode> larger(String content) {
        return made(content, USUAL)
                .map(code -> USUAL * LEAST_MODULE / code.moduleMm())
                .filter(size -> size <= LARGEST)
                .flatMap(size -> made(content, size)
                        .map(code -> new ScanCode(content, code.area().outline(), size)));
    }

    /** Its outline as SVG path data, y down. */
    public String path() {
        return PathData.of(outline);
    }

    private static Optional<MadeCode> made(String content, double size) {
        return CodeMaker.make(CodeKind.DATA_MATRIX, content, size, size, false) instanceof MadeCode code
                ? Optional.of(code)
                : Optional.empty();
    }
}
