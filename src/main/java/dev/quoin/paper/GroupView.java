package dev.quoin.paper;

import dev.quoin.shop.Blank;
import dev.quoin.shop.Lens;
import java.util.List;

/**
 * What stands on the machine while the plates of a group are marked.
 *
 * @param name what tells the group from others, as text: its values of {@code --group-by}; may be empty
 * @param round whether its pieces are round: then the height is that down to their top line
 * @param heightToSet from the lens's reference face down to what the blank lies on: the focus distance and the blank's
 *     thickness together, mm
 * @param jig as papers name it
 * @param plates how many plates it fills
 * @param items how many items it has
 * @param notes remarks to read before it starts, each a sentence without a full stop
 * @param exposures for each step; empty on papers that leave them out
 */
public record GroupView(
        String name,
        String recipe,
        Blank blank,
        Lens lens,
        boolean round,
        double heightToSet,
        String jig,
        int plates,
        int items,
        List<String> notes,
        List<ExposureView> exposures) {
    public GroupView {
        notes = List.copyOf(notes);
        exposures = List.copyOf(exposures);
    }
}
