package dev.quoin.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.browser.Chromium;
import dev.quoin.browser.Poppler;
import dev.quoin.code.CodeKind;
import dev.quoin.code.CodeMaker;
import dev.quoin.code.MadeCode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The code on a plate's block, as a decoder that is not ours (libdmtx) reads it from the printed page. */
class ScanCodeTest {
    private static final Path DECODER = Path.of("/usr/bin/dmtxread");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a/plate-001",
                "harbour-tags/plate-001",
                "an order with a name as long as a careful customer gives it, 2026-03-05/plate-0123"
            })
    void itsModulesPrintNoSmallerThanHalfAMillimetre(String content) {
        ScanCode code = ScanCode.of(content).orElseThrow();
        MadeCode same = (MadeCode) CodeMaker.make(CodeKind.DATA_MATRIX, content, code.size(), code.size(), false);
        assertEquals(same.area().outline(), code.outline());
        assertTrue(same.moduleMm() >= 0.5 - 1e-9, "module " + same.moduleMm() + " mm");
    }

    @Test
    void aNameThatWouldNeedHalfThePageGetsNone() {
        assertEquals(Optional.empty(), ScanCode.of("Long Name; ".repeat(60)));
    }

    @Tag("browser")
    @ParameterizedTest
    @ValueSource(
            strings = {
                "harbour-tags/plate-001",
                "Jörðin & <Söhne>/plate-042",
                "order-of-forty-two-letters-and-2-digits/plate-001"
            })
    void aDecoderReadsItFromThePrintedPage(String content) throws Exception {
        PlateView bare = SampleSheet.tray(1, SampleSheet.FIRST_ITEM, List.of("Ada Marsh"));
        PlateView plate = new PlateView(
                bare.number(),
                bare.files(),
                bare.group(),
                bare.changes(),
                bare.items(),
                bare.markingSeconds(),
                bare.handlingSeconds(),
                bare.totalSeconds(),
                bare.setupSeconds(),
                bare.steps(),
                bare.slots(),
                ScanCode.of(content),
                List.of());
        SheetHead head = SampleSheet.head("run", List.of(plate), List.of(), List.of());
        Path pdf = new Chromium(folder).print(SampleSheet.html(head, List.of(plate)));
        assertEquals(content, read(Poppler.picture(pdf, 2, 300)));
    }

    private String read(Path picture) throws Exception {
        Assumptions.assumeTrue(Files.isExecutable(DECODER), "skipped: no " + DECODER);
        Process process = new ProcessBuilder(DECODER.toString(), "-N1", "-m20000", picture.toString()).start();
        byte[] out = process.getInputStream().readAllBytes();
        process.waitFor();
        return new String(out, StandardCharsets.ISO_8859_1);
    }
}
