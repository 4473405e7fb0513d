package dev.quoin.job;

import dev.quoin.art.Artwork;
import dev.quoin.art.SameSize;
import dev.quoin.art.SharedSizes;
import dev.quoin.art.Template;

/** Which texts share their sizes, as the survey of all items finds them. */
final class Sharing {
    private final SharedSizes ofOrder = SharedSizes.none();
    private boolean byOrder;
    private boolean byPlate;

    void take(Template template, Artwork artwork) {
        ofOrder.take(template, artwork, SameSize.ORDER);
        byOrder |= artwork.sizes().stream().anyMatch(size -> size.with() == SameSize.ORDER);
        byPlate |= artwork.sizes().stream().anyMatch(size -> size.with() == SameSize.PLATE);
    }

    /** The sizes that all items of the order share. */
    SharedSizes ofOrder() {
        return ofOrder;
    }

    /** Whether items of a plate share any. */
    boolean byPlate() {
        return byPlate;
    }

    /** Whether any text is smaller than it could be for the sake of others. */
    boolean isAny() {
        return byOrder || byPlate;
    }
}
