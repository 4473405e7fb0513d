package dev.quoin.job;

import dev.quoin.geometry.Point;
import dev.quoin.plate.Stand;
import dev.quoin.plate.Stands;
import dev.quoin.problem.Problems;
import java.util.List;

/** Reads in which ways the jigs of a job can stand. */
record StandsReader(JobSettings settings, Problems problems) {
    Stands read() {
        List<Point> shifts = new JigSteps(settings, problems).read();
        List<Stand> front = shifts.isEmpty()
                ? List.of(Stand.LOADED)
                : shifts.stream().map(shift -> Stand.at(shift.x(), shift.y())).toList();
        return new Stands(front, List.of());
    }
}
