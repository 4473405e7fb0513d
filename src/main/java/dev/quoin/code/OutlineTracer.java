package dev.quoin.code;

import dev.quoin.geometry.Path;

/**
 * Walks along the edges between dark and light modules, the dark ones on its left, and so goes anticlockwise around dark
 * regions and clockwise around holes in them. Where two dark modules touch at a corner it turns left, which keeps their
 * outlines apart. Only corners become points.
 */
final class OutlineTracer {
    private static final int RIGHT = 0;
    private static final int DIRECTIONS = 4;

    private final ModuleGrid grid;
    /** The modules and a margin of light ones, row by row; and of the dark ones, at whose bottom edge an outline has been. */
    private final boolean[] dark;

    private final boolean[] bottomsSeen;
    /** From one row of them to the next. */
    private final int wide;
    /** From a corner to the next: to the right, up, left, down. A corner is told by the module on its lower right. */
    private final int[] steps;
    /** From a corner to the module ahead on the left of the way in each direction. */
    private final int[] lefts;

    OutlineTracer(ModuleGrid grid) {
        this.grid = grid;
        wide = grid.columns() + 2;
        dark = new boolean[wide * (grid.rows() + 2)];
        bottomsSeen = new boolean[dark.length];
        steps = new int[] {1, -wide, -1, wide};
        lefts = new int[] {-wide, -wide - 1, -1, 0};
        for (int i = grid.dark().nextSetBit(0); i >= 0; i = grid.dark().nextSetBit(i + 1)) {
            dark[(i / grid.columns() + 1) * wide + i % grid.columns() + 1] = true;
        }
    }

    Path trace(double width, double height) {
        Path.Builder path = Path.builder();
        for (int module = 0; module < dark.length; module++) {
            // Every outline, of a region or a hole, has an edge that runs right along the bottom of a dark module.
            if (dark[module] && !dark[module + wide] && !bottomsSeen[module]) {
                walk(module + wide, path, width, height);
            }
        }
        return path.build();
    }

    /** One outline, from a corner of the grid to the right. */
    private void walk(int start, Path.Builder path, double width, double height) {
        int at = start;
        int direction = RIGHT;
        boolean begun = false;
        do {
            if (direction == RIGHT) {
                bottomsSeen[at - wide] = true;
            }
            at += steps[direction];
            int next = turn(at, direction);
            if (next != direction) {
                corner(at, width, height, begun, path);
                begun = true;
            }
            direction = next;
        } while (at != start || direction != RIGHT);
        path.close();
    }

    private void corner(int at, double width, double height, boolean begun, Path.Builder path) {
        double x = (at % wide - 1) * width - grid.columns() * width / 2;
        double y = grid.rows() * height / 2 - (at / wide - 1) * height;
        if (begun) {
            path.lineTo(x, y);
        } else {
            path.moveTo(x, y);
        }
    }

    /** Left where the module ahead on the left is light, right where the one ahead on the right is dark too. */
    private int turn(int at, int direction) {
        int toTheRight = (direction + 3) % DIRECTIONS;
        if (!dark[at + lefts[direction]]) {
            return (direction + 1) % DIRECTIONS;
        }
        // Ahead on the right lies what is ahead on the left after a turn to the right.
        return dark[at + lefts[toTheRight]] ? toTheRight : direction;
    }
}
