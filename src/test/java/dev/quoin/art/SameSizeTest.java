package dev.quoin.art;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.problem.Problems;
import org.junit.jupiter.api.Test;

class SameSizeTest {
    private static final String TAG = """
            <svg xmlns="http://www.w3.org/2000/svg" width="40mm" height="20mm" viewBox="0 0 40 20">
              <rect id="box" class="guide" x="5" y="5" width="30" height="10"/>
              <text data-fit="box" data-min-height="0.5" data-max-height="9"%s font-size="9">${name!}</text>
            </svg>
            """;

    private final Merged order = Merged.columns("Name");

    private Template template(String attribute) {
        return order.compile(TAG.formatted(attribute), new Problems()).orElseThrow();
    }

    private double height(Template template, SharedSizes sizes, String name) {
        return order.art(template, sizes, name).texts().get(0).capHeight();
    }

    @Test
    void givenALongNameTheShortOnesTakeItsSize() {
        Template template = template(" data-same-size=\"order\"");
        SharedSizes sizes = SharedSizes.none();
        for (String name : new String[] {"Bo", "Bartholomew Featherstone", "Anna"}) {
            sizes.take(template, order.art(template, SharedSizes.none(), name), SameSize.ORDER);
        }
        double least = height(template, SharedSizes.none(), "Bartholomew Featherstone");
        assertTrue(height(template, SharedSizes.none(), "Bo") > 2 * least);
        assertEquals(least, height(template, sizes, "Bo"));
        assertEquals(least, height(template, sizes, "Anna"));
        assertEquals(least, height(template, sizes, "Bartholomew Featherstone"));
    }

    @Test
    void sizesOfThePlateAreNotThoseOfTheOrder() {
        Template template = template(" data-same-size=\"plate\"");
        SharedSizes sizes = SharedSizes.none();
        sizes.take(template, order.art(template, SharedSizes.none(), "Bartholomew Featherstone"), SameSize.ORDER);
        assertEquals(height(template, SharedSizes.none(), "Bo"), height(template, sizes, "Bo"));
        sizes.take(template, order.art(template, SharedSizes.none(), "Bartholomew Featherstone"), SameSize.PLATE);
        assertTrue(height(template, sizes, "Bo") < height(template, SharedSizes.none(), "Bo"));
    }

    @Test
    void aTextThatSaysNothingMakesNoOtherSmaller() {
        String frame = "<rect class=\"engrave\" x=\"1\" y=\"1\" width=\"2\" height=\"2\"/>";
        Template template = order.compile(
                        TAG.formatted(" data-same-size=\"order\"").replace("</svg>", frame + "</svg>"), new Problems())
                .orElseThrow();
        assertEquals(0, order.art(template, SharedSizes.none(), "").sizes().size());
    }

    @Test
    void textsThatShareNothingKeepTheirOwnSize() {
        Template template = template("");
        SharedSizes sizes = SharedSizes.none();
        sizes.take(template, order.art(template, SharedSizes.none(), "Bartholomew Featherstone"), SameSize.ORDER);
        assertEquals(height(template, SharedSizes.none(), "Bo"), height(template, sizes, "Bo"));
    }

    @Test
    void anotherWordIsAnError() {
        Problems problems = new Problems();
        order.compile(TAG.formatted(" data-same-size=\"plates\""), problems);
        assertEquals(
                "tag.svg:3:3: <text>: data-same-size is 'plates'; did you mean 'plate'?",
                problems.sorted().get(0).toString());
    }
}
