package dev.quoin.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

class ShopReaderTest {
    @Test
    void theBuiltInShopHasNoProblem() throws IOException {
        Problems problems = new Problems();
        Shop shop =
                ShopReader.read(ShopFiles.builtIn(), problems).orElseThrow(() -> new AssertionError(told(problems)));
        assertEquals(List.of(), told(problems));
        assertEquals(2, shop.lenses().size());
    }

    private static List<String> told(Problems problems) {
        return problems.sorted().stream().map(Problem::toString).toList();
    }
}
