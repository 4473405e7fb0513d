package dev.quoin.verify;

import dev.quoin.plate.Stand;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Recipe;
import dev.quoin.shop.Step;
import dev.quoin.store.ReprintFolder;
import dev.quoin.table.Table;
import dev.quoin.table.TableReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the table of a reprint claims of an item.
 *
 * @param plate the plate that the item was prepared for
 * @param slot the slot in which it is marked again
 * @param stepNumbers the steps that are marked again
 * @param part of the reprint, from 1
 * @param stand how the jig stands in it
 */
record ReprintClaim(Place place, int item, int plate, String slot, Set<String> stepNumbers, int part, Stand stand) {
    /** The claims of a reprint; none if its table cannot be read, which its hash tells. */
    static List<ReprintClaim> read(Path run, int reprint) throws IOException {
        String name = ReprintFolder.name(reprint, "csv");
        Optional<Table> table =
                TableReader.read(name, Files.readAllBytes(run.resolve(name)), Optional.of(','), new Problems());
        List<ReprintClaim> claims = new ArrayList<>();
        table.ifPresent(read -> read.rows().forEach(row -> claims.add(of(new RunRow(read, row)))));
        return claims;
    }

    private static ReprintClaim of(RunRow row) {
        return new ReprintClaim(
                Place.of(row.table().file(), row.row().line()),
                row.whole("item"),
                row.whole("plate"),
                row.text("slot"),
                Set.of(row.text("steps").split(" ")),
                row.whole("part"),
                StandClaims.stand(row));
    }

    /** The steps of its recipe that are marked again. */
    List<Step> steps(Recipe recipe) {
        return recipe.steps().stream()
                .filter(step -> stepNumbers.contains(Integer.toString(step.number())))
                .toList();
    }
}
