package dev.quoin.job;

import dev.quoin.optics.Beam;
import dev.quoin.shop.Cylinder;
import dev.quoin.shop.Lens;
import dev.quoin.store.Run;
import dev.quoin.verify.Fixture;
import dev.quoin.verify.PlateClaim;
import dev.quoin.verify.RoundFixture;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the plates of a run are held to, from the inputs of each one's section; each is made once. */
final class Fixtures {
    private final List<RunShop> shops = new ArrayList<>();
    private final Map<List<Object>, Fixture> made = new HashMap<>();

    Fixtures(Run run) throws IOException {
        for (int section = 1; section <= run.sections(); section++) {
            shops.add(RunShop.of(run, section));
        }
    }

    private static Optional<RoundFixture> round(RunShop shop, PlateClaim plate) throws IOException {
        Optional<Cylinder> piece = shop.round(plate.jig());
        if (piece.isEmpty()) {
            return Optional.empty();
        }
        Lens lens = shop.lens(plate.lens());
        Beam beam = Beam.of(shop.machine());
        double depth = beam.rayleighLength(beam.spot(lens.focalLength()));
        return Optional.of(new RoundFixture(piece.get(), depth, lens.reach().width() / 2));
    }

    Fixture of(PlateClaim plate) {
        List<Object> key = List.of(plate.section(), plate.jig(), plate.lens(), plate.recipe(), plate.stand());
        return made.computeIfAbsent(key, none -> {
            try {
                RunShop shop = shops.get(plate.section() - 1);
                return new Fixture(
                        shop.recipe(plate.recipe()),
                        shop.lens(plate.lens()),
                        shop.placements(plate.jig(), plate.stand()),
                        shop.stands(),
                        round(shop, plate));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }
}
