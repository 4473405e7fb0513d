package dev.quoin.plate;

import dev.quoin.shop.Machine;
import java.util.ArrayList;
import java.util.List;

/**
 * Parts the plates of round pieces: a part for each strip, alike on all plates, whether or not each has marks there.
 *
 * @param cuts how many seams run through ink
 * @param codesCut how many places of codes no strip holds whole
 */
public record RoundPlan(Group group, List<Band> bands, int cuts, int codesCut, Machine machine) {
    public RoundPlan {
        bands = List.copyOf(bands);
    }

    /** The parts of a plate with this one seat. */
    public List<Part> parts(List<Seat> seats) {
        List<Part> parts = new ArrayList<>();
        for (Band band : bands) {
            Stand stand = Stand.of(band);
            Placement placement = FieldPose.place(group.jig(), stand, machine).get(0);
            parts.add(new Part(
                    parts.size() + 1,
                    stand,
                    seats.stream().map(seat -> new Seat(seat.item(), placement)).toList()));
        }
        return parts;
    }
}
