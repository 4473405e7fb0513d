package dev.quoin.job;

import dev.quoin.art.Artwork;
import dev.quoin.art.MarkedCode;
import dev.quoin.code.CodeKind;
import dev.quoin.geometry.Decimals;
import dev.quoin.optics.Beam;
import dev.quoin.plate.GroupSurvey;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import dev.quoin.problem.Severity;
import dev.quoin.shop.Lens;
import dev.quoin.shop.Shop;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Remembers codes that are too fine for some lens of the shop, until it is known through which lens they are marked. */
final class CodeChecks {
    /** A module of fewer spots is likely to run into its neighbours. */
    private static final int FEWEST_SPOTS = 2;

    private final Beam beam;
    private final double widest;
    private final List<FineCode> codes = new ArrayList<>();

    private record FineCode(GroupSurvey group, Place place, int item, CodeKind kind, double module) {}

    CodeChecks(Shop shop) {
        beam = Beam.of(shop.machine());
        widest = shop.lenses().values().stream()
                .mapToDouble(lens -> beam.spot(lens.focalLength()))
                .max()
                .orElse(0);
    }

    void take(Artwork artwork, GroupSurvey group, Place place, int item) {
        for (MarkedCode code : artwork.codes()) {
            if (code.module() < FEWEST_SPOTS * widest) {
                codes.add(new FineCode(group, place, item, code.kind(), code.module()));
            }
        }
    }

    /** Tells of the codes that are too fine for the lens of their group. */
    void tell(Map<GroupSurvey, Lens> lenses, Problems problems) {
        for (FineCode code : codes) {
            Lens lens = lenses.get(code.group());
            double spots = FEWEST_SPOTS * beam.spot(lens.focalLength());
            if (code.module() < spots) {
                problems.add(new Problem(
                        Severity.WARNING,
                        code.place(),
                        code.item(),
                        "the modules of its " + code.kind().word() + " code are " + Decimals.mm(code.module())
                                + " mm wide, less than two spots of the lens " + lens.name() + " ("
                                + Decimals.mm(spots) + " mm)",
                        "make the code larger or its content shorter, or use a lens of shorter focal length"));
            }
        }
    }
}
