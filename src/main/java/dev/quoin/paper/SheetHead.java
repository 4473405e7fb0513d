package dev.quoin.paper;

import dev.quoin.problem.Problem;
import dev.quoin.shop.Material;
import java.util.List;
import java.util.Optional;

/**
 * The first page of a run sheet: what the whole run is, and what to look at before it starts.
 *
 * @param run the run's name
 * @param handedIn the date as the user gave it; none otherwise, since no clock goes into the output
 * @param orderFile the order's file name
 * @param plates how many
 * @param items how many are on the plates
 * @param seconds the whole run: plates, and setting up between them, s
 * @param setupSeconds the part of it that is setting up, s
 * @param blanks what to lay out
 * @param groups in working order
 * @param problems errors first come first on the paper, whatever the order here
 * @param leftOut rows of the order that are on no plate
 * @param laserClass by IEC 60825-1 as the machine table states it; empty where it does not
 * @param materials those of the blanks in this run, each once
 * @param index a line for each plate
 */
public record SheetHead(
        String run,
        Optional<String> handedIn,
        String orderFile,
        int plates,
        int items,
        double seconds,
        double setupSeconds,
        List<BlankCount> blanks,
        List<GroupView> groups,
        List<Problem> problems,
        List<LeftOut> leftOut,
        String laserClass,
        List<Material> materials,
        List<PlateLine> index) {
    public SheetHead {
        blanks = List.copyOf(blanks);
        groups = List.copyOf(groups);
        problems = List.copyOf(problems);
        leftOut = List.copyOf(leftOut);
        materials = List.copyOf(materials);
        index = List.copyOf(index);
    }

    /** The problems, the gravest first; what is the same in many lines once. */
    public List<ToldProblem> told() {
        return ToldProblem.of(problems);
    }
}
