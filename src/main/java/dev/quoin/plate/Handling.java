package dev.quoin.plate;

import dev.quoin.shop.Machine;

/** What the operator's work on a plate takes by the machine's table, without setting up (design, section 7). */
public record Handling(Machine machine) {
    /** Loading so many items, both ways, and starting; s. */
    public double loading(int items) {
        return items * machine.load() + machine.plate();
    }

    /** What comes before a part, s: before the first one, loading all items of the plate. */
    public double before(Plate plate, Part part) {
        int index = plate.parts().indexOf(part);
        return index == 0
                ? loading(plate.seats().size())
                : between(plate.parts().get(index - 1).stand(), part.stand());
    }

    /**
     * What comes between two parts, s: a jig that is turned over as a whole, its pieces in it, counts like a plate; one
     * that is shifted, or a round piece that is turned, as the table has it.
     */
    public double between(Stand before, Stand now) {
        return (now.isTurnedOverFrom(before) ? machine.plate() : 0) + (now.isShiftedFrom(before) ? machine.shift() : 0);
    }
}
