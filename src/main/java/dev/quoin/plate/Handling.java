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
        return part.number() == plate.parts().get(0).number()
                ? loading(plate.seats().size())
                : 0;
    }
}
