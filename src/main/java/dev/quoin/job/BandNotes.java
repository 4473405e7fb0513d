package dev.quoin.job;

import dev.quoin.geometry.Decimals;
import dev.quoin.plate.Band;
import dev.quoin.plate.RoundPlan;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;

/** Says in how many strips round pieces are marked, and whether their seams run through marks. */
record BandNotes(RoundPlan plan, double overlap) {
    void tell(Place place, Problems problems) {
        int bands = plan.bands().size();
        double widest = plan.bands().stream()
                .mapToDouble(band -> band.to() - band.from())
                .max()
                .orElse(0);
        problems.note(
                place,
                "round pieces are marked in " + (bands == 1 ? "1 strip" : bands + " strips") + ", the widest "
                        + Decimals.text(widest, 2) + " mm (" + plan.group().describe() + ", lens "
                        + plan.group().lens().name() + ")",
                "");
        if (plan.codesCut() > 0) {
            problems.error(
                    place,
                    "a code is wider than a strip, or stands where a seam must run ("
                            + plan.group().describe() + ")",
                    "make it narrower than " + Decimals.text(widest, 1) + " mm, with room on both sides, or use a lens"
                            + " of longer focal length");
        }
        if (plan.cuts() > 0) {
            problems.warning(
                    place,
                    (plan.cuts() == 1 ? "1 seam runs" : plan.cuts() + " seams run")
                            + " through marks, at " + seams()
                            + " mm from the drawing's middle; strips overlap there by "
                            + Decimals.mm(overlap) + " mm",
                    "look at the first piece; leave gaps between marks no further apart than a strip is wide");
        }
    }

    private String seams() {
        StringBuilder seams = new StringBuilder();
        for (int i = 0; i + 1 < plan.bands().size(); i++) {
            Band next = plan.bands().get(i + 1);
            if (next.from() <= plan.bands().get(i).to()) {
                seams.append(seams.isEmpty() ? "" : ", ").append(Decimals.text(next.from(), 1));
            }
        }
        return seams.toString();
    }
}
