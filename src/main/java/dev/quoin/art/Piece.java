package dev.quoin.art;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Recipe;

/** A piece of a compiled template: draws itself for each row. */
sealed interface Piece permits FixedPiece, TextPiece, CodePiece, ConditionalPiece, RedrawnPiece {
    void draw(Merging row);

    /** Tells what a recipe cannot do with it. */
    void check(Recipe recipe, Problems problems);

    /** Tells if a recipe has no step for a process. */
    static void checkProcess(String process, String what, Place place, Recipe recipe, Problems problems) {
        if (!recipe.processes().contains(process)) {
            problems.error(
                    place,
                    what + " is to be treated by '" + process + "', and the recipe " + recipe.name()
                            + " has no step for it",
                    "choose another recipe, or make its class one of "
                            + String.join(
                                    ", ", recipe.processes().stream().sorted().toList()) + " (or guide)");
        }
    }
}
