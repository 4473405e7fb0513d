package dev.quoin.job;

import dev.quoin.paper.PlateView;
import dev.quoin.plate.WorkedPlate;
import dev.quoin.problem.Problems;
import java.util.List;

/**
 * A plate whose files stand.
 *
 * @param names of the files of each part
 * @param files as the sheet names them: those of its first piece, if any, before all others
 * @param block of the run sheet
 * @param notes to tell of it
 */
record WrittenPlate(
        WorkedPlate worked,
        List<List<String>> names,
        List<String> files,
        PlateView view,
        String block,
        Problems notes) {}
