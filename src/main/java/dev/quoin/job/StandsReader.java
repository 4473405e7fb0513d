package dev.quoin.job;

import dev.quoin.geometry.Point;
import dev.quoin.plate.FlipAxis;
import dev.quoin.plate.Stand;
import dev.quoin.plate.Stands;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.util.List;
import java.util.Optional;

/** Reads in which ways the jigs of a job can stand. */
record StandsReader(JobSettings settings, Problems problems) {
    Stands read() {
        List<Point> shifts = new JigSteps(settings, problems).read();
        List<Stand> front = shifts.isEmpty()
                ? List.of(Stand.LOADED)
                : shifts.stream().map(shift -> Stand.at(shift.x(), shift.y())).toList();
        Optional<FlipAxis> axis = flip();
        return new Stands(
                front,
                axis.map(about -> front.stream()
                                .map(stand -> stand.turnedOver(about))
                                .toList())
                        .orElse(List.of()),
                Rotary.overlap(settings, problems));
    }

    /** Whether the back of the pieces is marked too. */
    static boolean isTwoSided(JobSettings settings) {
        return settings.text(JobKey.BACK_TEMPLATE).isPresent()
                || settings.text(JobKey.BACK_TEMPLATE_COLUMN).isPresent();
    }

    /** The axis about which jigs are turned over; none where only the front is marked. */
    private Optional<FlipAxis> flip() {
        Optional<String> text = settings.text(JobKey.FLIP);
        if (!isTwoSided(settings)) {
            text.ifPresent(axis -> problems.warning(
                    settings.place(JobKey.FLIP),
                    "flip: no template for the back is given",
                    "give --back-template too"));
            return Optional.empty();
        }
        Optional<FlipAxis> axis = text.flatMap(FlipAxis::named);
        if (axis.isEmpty() && settings.text(JobKey.ROTARY).isEmpty()) {
            problems.error(
                    text.isPresent() ? settings.place(JobKey.FLIP) : Place.of("--flip"),
                    text.map(word -> "flip: '" + word + "' is no axis")
                            .orElse("flip: it is not said how the jig is turned over for the back"),
                    "write y if it is turned left to right, x if top to bottom");
        }
        return Optional.of(axis.orElse(FlipAxis.Y));
    }
}
