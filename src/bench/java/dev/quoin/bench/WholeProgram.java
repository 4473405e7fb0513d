package dev.quoin.bench;

import java.io.IOException;

/**
 * A measurement of the program from its start to its end, through the launcher of its distribution, against what stands
 * beside it in the same run. It prints a line for each, with both sides, and the bar where one is set.
 */
interface WholeProgram {
    void measure(Distribution quoin) throws IOException;
}
