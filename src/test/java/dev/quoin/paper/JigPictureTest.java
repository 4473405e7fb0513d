package dev.quoin.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.geometry.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The picture of a jig: the slots where their own numbers put them. */
class JigPictureTest {
    @Test
    void aSlotTurnedAnticlockwiseAtTheUpperRightIsWrittenInSvgsDownwardCoordinates() {
        Path flag =
                Path.builder().moveTo(0, 0).lineTo(10, 0).lineTo(10, 4).close().build();
        JigPicture picture = JigPicture.of(List.of(SampleSheet.filled("A", 20, 30, 30, flag, 1)));
        JigPicture.Drawn drawn = picture.slots().get(0);
        assertEquals("translate(20 -30) rotate(-30)", drawn.transform());
        assertEquals("M0 0L10 0L10 -4Z", drawn.path());
    }

    @Test
    void itIsDrawnTrue() {
        JigPicture picture =
                JigPicture.of(SampleSheet.tray(1, 7001, List.of("Ada")).slots());
        assertEquals(picture.box().width() / picture.box().height(), picture.width() / picture.height(), 1e-9);
        assertEquals(picture.box().width(), picture.width() * picture.unit(), 1e-9);
    }

    @Test
    void itFitsThePage() {
        SlotView wide = SampleSheet.filled("A", -300, 0, 0, SampleSheet.OBLONG, 1);
        SlotView end = SampleSheet.filled("B", 300, 0, 0, SampleSheet.OBLONG, 2);
        assertEquals(184, JigPicture.of(List.of(wide, end)).width(), 1e-9);
        SlotView high = SampleSheet.filled("C", 0, 300, 0, SampleSheet.OBLONG, 3);
        assertTrue(JigPicture.of(List.of(wide, high)).height() <= 130);
    }
}
