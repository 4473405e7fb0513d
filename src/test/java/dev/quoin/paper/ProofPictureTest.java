package dev.quoin.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProofPictureTest {
    private static ProofPicture picture(double width, double height, String colour) {
        Path outline = Path.of(Box.centred(width, height));
        return ProofPicture.of(
                new ProofItem(1, 1, 2, List.of(), "", outline, colour, List.of(), List.of(), false),
                new SharedOutlines());
    }

    /** With 1 mm of border, in the room of 104 x 70 mm. */
    @ParameterizedTest
    @CsvSource({"20,10,3", "32,32,2", "50,25,2", "70,28,1.25", "100,40,1", "100,100,0.5", "600,20,0.1"})
    void smallPiecesAreDrawnLargerAndLargeOnesSmallerByRoundFactors(double width, double height, double scale) {
        assertEquals(scale, picture(width, height, "").scale());
    }

    /** By the contrast ratio of WCAG 2.1 with black and white, worked out by hand for the first two. */
    @ParameterizedTest
    @CsvSource({
        "#ffffff,false",
        "#000000,true",
        "#c9cdd2,false",
        "#2b4c7e,true",
        "#8a5a33,true",
        "'',false",
        "navy,true",
        "steelish,false"
    })
    void marksAreDrawnInWhatContrastsMoreWithTheBlank(String colour, boolean light) {
        assertEquals(light, picture(30, 20, colour).light());
    }

    @Test
    void aColourThatIsNoPlainNumberNeverReachesThePage() {
        assertEquals("#ffffff", picture(30, 20, "red\"/><script>").colour());
    }
}
