package dev.quoin.plate;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import dev.quoin.shop.Jig;
import dev.quoin.shop.Machine;
import dev.quoin.shop.Slot;
import java.util.List;

/**
 * How a jig lies in the field.
 *
 * @param jigToField the move from jig coordinates into the field's (origin at its centre, x right, y up), mm
 */
public record FieldPose(Affine jigToField) {
    /** The jig's centre on the field's centre, but for its shift; the field as it lies against the machine's body. */
    public static FieldPose of(Jig jig, Machine machine) {
        return of(jig, Stand.LOADED, machine);
    }

    /** The same of a jig that is shifted, along its own directions as it really lies: what guides it turns it so. */
    private static FieldPose of(Jig jig, Stand stand, Machine machine) {
        Affine toCentre = Affine.translate(
                stand.dx() - jig.centre().x(), stand.dy() - jig.centre().y());
        return new FieldPose(toCentre.then(jig.shift().move()).then(bodyToField(machine)));
    }

    /** The slots of a jig as they lie in the field while it stands so, in the jig's order. */
    public static List<Placement> place(Jig jig, Stand stand, Machine machine) {
        Jig turned = stand.flip().map(axis -> TurnedJig.of(jig, axis)).orElse(jig);
        List<Placement> placements = of(turned, stand, machine).place(turned);
        return stand.band().isPresent() && jig.round().isPresent()
                ? showing(new Wrap(jig.round().get(), stand.band().get()), placements)
                : placements;
    }

    /** Of a round piece the strip that is on top, as it is seen from above. */
    private static List<Placement> showing(Wrap wrap, List<Placement> placements) {
        double width = 2 * wrap.halfWidth();
        double height = wrap.piece().height();
        Path strip = Path.of(Box.centred(width, height));
        return placements.stream()
                .map(one -> new Placement(
                        new Slot(
                                one.slot().id(),
                                one.slot().centre(),
                                one.slot().rotation(),
                                width,
                                height,
                                strip,
                                true),
                        one.pose()))
                .toList();
    }

    /** The move from the directions of the machine's body, in which jigs are drawn, to those of its field. */
    public static Affine bodyToField(Machine machine) {
        Affine mirror =
                switch (machine.fieldMirror()) {
                    case NONE -> Affine.IDENTITY;
                    case X -> Affine.scale(-1, 1);
                    case Y -> Affine.scale(1, -1);
                };
        return Affine.rotate(-machine.fieldTurn()).then(mirror);
    }

    /** A slot as the operator sees it at the machine, however the field lies against its body. */
    public static Placement seen(Placement inField, Machine machine) {
        return new Placement(
                inField.slot(), inField.pose().then(bodyToField(machine).inverse()));
    }

    public Placement place(Slot slot) {
        return new Placement(slot, slot.pose().then(jigToField));
    }

    public List<Placement> place(Jig jig) {
        return jig.slots().stream().map(this::place).toList();
    }
}
