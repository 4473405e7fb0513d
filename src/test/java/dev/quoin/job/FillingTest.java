package dev.quoin.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Given four names and a tray of two rows of three, then they are laid like this. */
class FillingTest {
    @TempDir
    Path folder;

    private SmallJob job;

    @BeforeEach
    void given() throws IOException {
        job = new SmallJob(folder, "Name,Due\nAska,2026-03-09\nBirk,2026-03-05\nCole,2026-03-07\nDunn,2026-03-05\n");
    }

    @Test
    void columnsAreFilledFromTheTop() throws IOException {
        job.with(JobKey.FILL, "columns").prepare();
        assertEquals(List.of("A1=1 B1=2 A2=3 B2=4"), job.plates());
    }

    @Test
    void skippedSlotsStayEmptyOnEveryPlateAndAreToldOf() throws IOException {
        job.with(JobKey.SKIP_SLOTS, "A2, B1,B2,B3").prepare();
        assertEquals(List.of("A1=1 A3=2", "A1=3 A3=4"), job.plates());
        assertEquals("tray: note: slots A2, B1, B2, B3 are left empty, as --skip-slots asks", job.problems());
    }

    @Test
    void aPartFilledJigIsFilledFromTheFirstSlotOnAndTheNextOnesWhole() throws IOException {
        job.with(JobKey.FIRST_SLOT, "B2").prepare();
        assertEquals(List.of("B2=1 B3=2", "A1=3 A2=4"), job.plates());
    }

    @Test
    void whatIsAddedLaterStartsOnAWholeJig() throws IOException {
        job.with(JobKey.FIRST_SLOT, "B2").prepare();
        job.file("more.csv", "Name,Due\nAska,2026-03-09\nBirk,2026-03-05\nCole,2026-03-07\nDunn,2026-03-05\nEbba,\n");
        Extend extend = new Extend(job.run(), folder.resolve("more.csv"), new TreeSet<>(), Progress.SILENT);
        assertTrue(extend.run().result().isPresent());
        assertEquals("A1", job.table("items-2.csv").get(0).get("slot"));
    }

    @Test
    void theFirstSlotGoesByTheOrderOfFilling() throws IOException {
        job.with(JobKey.FILL, "columns").with(JobKey.FIRST_SLOT, "B2").prepare();
        assertEquals(List.of("B2=1 A3=2 B3=3", "A1=4"), job.plates());
    }

    @Test
    void aSlotThatTheJigLacksIsAnErrorThatNamesTheNearest() throws IOException {
        assertTrue(job.with(JobKey.SKIP_SLOTS, "C1")
                .with(JobKey.FIRST_SLOT, "A11")
                .prepare()
                .isEmpty());
        assertEquals(
                "--first-slot: the jig tray has no slot 'A11'; did you mean 'A1'?\n"
                        + "--skip-slots: the jig tray has no slot 'C1'; did you mean 'A1'?",
                job.problems());
    }

    @Test
    void anUnknownOrderIsAnErrorThatNamesTheNearest() throws IOException {
        assertTrue(job.with(JobKey.FILL, "colums").prepare().isEmpty());
        assertEquals("--fill: unknown order 'colums'; did you mean 'columns'?", job.problems());
    }

    @Test
    void skippingEverySlotLeavesNothingToFill() throws IOException {
        assertTrue(job.with(JobKey.SKIP_SLOTS, "A1,A2,A3,B1,B2,B3").prepare().isEmpty());
        assertTrue(job.problems().contains("no slot is left"), job.problems());
    }

    @Test
    void dueDatesComeFirst() throws IOException {
        job.with(JobKey.ORDER_BY, "Due").prepare();
        assertEquals(
                List.of("A1=2 A2=4 A3=3 B1=1"),
                List.of(sortedBySlot(job.plates().get(0))));
    }

    @Test
    void groupsOfOneSetUpComeNextToOneAnotherUnlessAnOrderIsAsked() throws IOException {
        job.file("order.csv", "Name,Due,Colour,Recipe\nA,3,red,steel-tag\nB,1,red,aluminium-tag\nC,2,blue,steel-tag\n")
                .with(JobKey.RECIPE_COLUMN, "Recipe")
                .with(JobKey.GROUP_BY, "Colour")
                .prepare();
        assertEquals(List.of("A1=1", "A1=3", "A1=2"), job.plates());
        job.with(JobKey.ORDER_BY, "Due").prepare();
        assertEquals(List.of("A1=2", "A1=3", "A1=1"), job.plates());
    }

    private static String sortedBySlot(String plate) {
        return String.join(" ", List.of(plate.split(" ")).stream().sorted().toList());
    }
}
