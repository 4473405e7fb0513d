package dev.quoin.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Recipe;
import dev.quoin.shop.Shop;
import dev.quoin.shop.ShopFiles;
import dev.quoin.shop.ShopReader;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

class BuiltInRecipesTest {
    @Test
    void onTheLensThatItNamesNoBuiltInRecipeIsDoubtful() throws IOException {
        Shop shop = ShopReader.read(ShopFiles.builtIn(), new Problems()).orElseThrow();
        assertFalse(shop.recipes().isEmpty());
        Problems problems = new Problems();
        for (Recipe recipe : shop.recipes().values()) {
            new RecipeCheck(shop.machine(), shop.lenses().get(recipe.lens()), problems).check(recipe, shop.lenses());
        }
        assertEquals(
                List.of(), problems.sorted().stream().map(Problem::toString).toList());
    }
}
