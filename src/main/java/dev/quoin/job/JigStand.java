package dev.quoin.job;

import dev.quoin.geometry.Decimals;
import dev.quoin.geometry.Point;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Jig;
import dev.quoin.shop.JigShift;
import dev.quoin.shop.Machine;
import java.util.List;
import java.util.Optional;

/**
 * How the jigs of a job stand in the machine, as its settings say: which point is to be at the field's centre, and how
 * they really lie.
 */
record JigStand(Optional<Point> centre, JigShift shift, Optional<Datum> datum) {
    /** Reads it; what is not understood is a problem, and taken as not given. */
    static JigStand of(JobSettings settings, Machine machine, Problems problems) {
        if (settings.text(JobKey.JIG_SHIFT).isPresent()
                && settings.text(JobKey.DATUM).isPresent()) {
            problems.error(
                    settings.place(JobKey.DATUM),
                    "datum: the jig's shift is given too, by jig-shift",
                    "give one of the two: measured points, or the shift");
        }
        return new JigStand(
                centre(settings, problems), shift(settings, problems), Datum.of(settings, machine, problems));
    }

    /** The jig as it stands; nothing, and a problem, if the measured points do not fit it. */
    Optional<Jig> stand(Jig jig, Problems problems) {
        Jig centred = centre.map(jig::centredAt).orElse(jig);
        if (datum.isPresent()) {
            return datum.get().fit(centred, problems).map(centred::shifted);
        }
        return Optional.of(centred.shifted(shift));
    }

    /** A shift in words. */
    static String words(JigShift shift) {
        return "marks are moved by " + Decimals.mm(shift.dx()) + ", " + Decimals.mm(shift.dy()) + " mm and turned by "
                + Decimals.mm(shift.angle()) + " degrees about the field's centre";
    }

    private static JigShift shift(JobSettings settings, Problems problems) {
        Optional<JigShift> shift = numbers(
                        settings,
                        JobKey.JIG_SHIFT,
                        3,
                        "write dx and dy in mm and degrees, such as 0.3,-0.15,0.2",
                        problems)
                .map(read -> new JigShift(read.get(0), read.get(1), read.get(2)));
        shift.ifPresent(given -> problems.note(settings.place(JobKey.JIG_SHIFT), "jig-shift: " + words(given), ""));
        return shift.orElse(JigShift.NONE);
    }

    private static Optional<Point> centre(JobSettings settings, Problems problems) {
        return numbers(settings, JobKey.JIG_CENTRE, 2, "write x and y in mm, such as 95,95", problems)
                .map(read -> new Point(read.get(0), read.get(1)));
    }

    private static Optional<List<Double>> numbers(
            JobSettings settings, JobKey key, int count, String remedy, Problems problems) {
        Optional<String> text = settings.text(key);
        Optional<List<Double>> read = text.flatMap(given -> Numbers.read(given, count));
        if (text.isPresent() && read.isEmpty()) {
            String what = count == 2 ? "no point" : "no shift";
            problems.error(settings.place(key), key.option() + ": '" + text.get() + "' is " + what, remedy);
        }
        return read;
    }
}
