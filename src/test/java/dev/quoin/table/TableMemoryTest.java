package dev.quoin.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.problem.Problems;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class TableMemoryTest {
    private static final int ROWS = 1_000_000;

    @Test
    @Tag("slow")
    void aMillionRowsOfSixShortCellsNeedLessThan150Megabytes() {
        byte[] content = content();
        long before = used();
        Table table =
                TableReader.read("o", content, Optional.empty(), new Problems()).orElseThrow();
        long after = used();
        assertEquals(
                List.of("name 999999", "b", "c", "2026-03-05", "e", "x999999"),
                table.rows().get(ROWS - 1).cells());
        assertEquals(ROWS, table.rows().size());
        assertTrue(after - before < 150_000_000L, (after - before) / 1_000_000 + " MB");
    }

    private static byte[] content() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes("n,b,c,d,e,x\n".getBytes(StandardCharsets.UTF_8));
        for (int i = 0; i < ROWS; i++) {
            out.writeBytes(("name " + i + ",b,c,2026-03-05,e,x" + i + "\n").getBytes(StandardCharsets.UTF_8));
        }
        return out.toByteArray();
    }

    private static long used() {
        System.gc();
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }
}
