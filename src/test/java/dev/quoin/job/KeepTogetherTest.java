package dev.quoin.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Given an order of a few customers, then these plates of a tray of six. */
class KeepTogetherTest {
    private static final String ORDER = """
            Customer,Number
            Aska,4
            Birk,4
            Cole,1
            Aska,1
            ,1
            Birk,1
            """;

    @TempDir
    Path folder;

    private SmallJob job;

    @BeforeEach
    void given() throws IOException {
        job = new SmallJob(folder, ORDER).with(JobKey.QUANTITY_COLUMN, "Number");
    }

    @Test
    void withoutItPlatesFillInTurn() throws IOException {
        job.prepare();
        assertEquals(List.of("A1=1 A2=2 A3=3 B1=4 B2=5 B3=6", "A1=7 A2=8 A3=9 B1=10 B2=11 B3=12"), job.plates());
    }

    @Test
    void withItEachCustomerLiesOnOnePlateSideBySide() throws IOException {
        job.with(JobKey.KEEP_TOGETHER, "Customer").prepare();
        assertEquals(List.of("A1=1 A2=2 A3=3 B1=4 B3=9 B2=10", "A1=5 A2=6 A3=7 B1=8 B3=11 B2=12"), job.plates());
    }

    @Test
    void theLowerBoundIsTold() throws IOException {
        job.with(JobKey.KEEP_TOGETHER, "Customer").prepare();
        assertEquals(
                "--keep-together: note: 2 plates (recipe steel-tag, jig tray) with each value of 'Customer' kept "
                        + "together, proven to be the least",
                job.problems());
    }

    @Test
    void aGroupOfAnEmptyValueIsNamedSo() throws IOException {
        job.file("order.csv", "Customer,Number\n,2\n")
                .with(JobKey.KEEP_TOGETHER, "Customer")
                .with(JobKey.GROUP_BY, "Customer")
                .prepare();
        assertTrue(job.problems().contains("1 plate (recipe steel-tag, jig tray, (empty)) with"), job.problems());
    }

    @Test
    void aCustomerLargerThanThePlateIsToldToBeSplit() throws IOException {
        job.file("order.csv", "Customer,Number\nAska,7\n")
                .with(JobKey.KEEP_TOGETHER, "Customer")
                .prepare();
        assertTrue(job.problems().endsWith("; values larger than a plate, and split: 1"), job.problems());
    }

    @Test
    void aColumnThatIsNotThereIsAnError() throws IOException {
        assertTrue(job.with(JobKey.KEEP_TOGETHER, "Custmer").prepare().isEmpty());
        assertEquals("--keep-together: the order has no column 'Custmer'; did you mean 'Customer'?", job.problems());
    }
}
