package dev.quoin.code;

import dev.quoin.geometry.Path;
import java.util.BitSet;

/**
 * Walks along the edges between dark and light modules, the dark ones on its left, and so goes anticlockwise around dark
 * regions and clockwise around holes in them. Where two dark modules touch at a corner it turns left, which keeps their
 * outlines apart. Only corners become points.
 */
final class OutlineTracer {
    /** Steps to the right, up, left, down, in columns and rows; rows count downwards. */
    private static final int[] STEP_X = {1, 0, -1, 0};

    private static final int[] STEP_Y = {0, -1, 0, 1};
    private static final int RIGHT = 0;

    private final ModuleGrid grid;
    private final BitSet bottomsSeen = new BitSet();

    OutlineTracer(ModuleGrid grid) {
        this.grid = grid;
    }

    Path trace(double width, double height) {
        Path.Builder path = Path.builder();
        for (int row = 0; row < grid.rows(); row++) {
            for (int column = 0; column < grid.columns(); column++) {
                // Every outline, of a region or a hole, has an edge that runs right along the bottom of a dark module.
                if (grid.isDark(column, row)
                        && !grid.isDark(column, row + 1)
                        && !bottomsSeen.get(row * grid.columns() + column)) {
                    walk(column, row + 1, path, width, height);
                }
            }
        }
        return path.build();
    }

    /** One outline, from a corner of the grid to the right. */
    private void walk(int startX, int startY, Path.Builder path, double width, double height) {
        int x = startX;
        int y = startY;
        int direction = RIGHT;
        boolean begun = false;
        do {
            if (direction == RIGHT) {
                bottomsSeen.set((y - 1) * grid.columns() + x);
            }
            x += STEP_X[direction];
            y += STEP_Y[direction];
            int next = turn(x, y, direction);
            if (next != direction) {
                corner(x * width - grid.columns() * width / 2, grid.rows() * height / 2 - y * height, begun, path);
                begun = true;
            }
            direction = next;
        } while (x != startX || y != startY || direction != RIGHT);
        path.close();
    }

    private static void corner(double x, double y, boolean begun, Path.Builder path) {
        if (begun) {
            path.lineTo(x, y);
        } else {
            path.moveTo(x, y);
        }
    }

    /** Left where the module ahead on the left is light, right where the one ahead on the right is dark too. */
    private int turn(int x, int y, int direction) {
        if (!ahead(x, y, direction, true)) {
            return (direction + 1) % 4;
        }
        return ahead(x, y, direction, false) ? (direction + 3) % 4 : direction;
    }

    /** Whether the module ahead of a corner, to the left or the right of the way, is dark. */
    private boolean ahead(int x, int y, int direction, boolean leftOfWay) {
        int side = (direction + (leftOfWay ? 1 : 3)) % 4;
        // The module's centre lies half a step ahead and half a step aside; grid corners are at whole numbers.
        int column = Math.floorDiv(2 * x + STEP_X[direction] + STEP_X[side], 2);
        int row = Math.floorDiv(2 * y + STEP_Y[direction] + STEP_Y[side], 2);
        return grid.isDark(column, row);
    }
}
