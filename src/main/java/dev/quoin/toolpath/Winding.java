package dev.quoin.toolpath;

import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Polyline;

/** How often closed chains run around a point. */
final class Winding {
    private Winding() {}

    /** Whether a point lies inside a cover; on its edge, either. */
    static boolean isInside(Cover cover, double x, double y) {
        int sum = 0;
        for (Polyline chain : cover.outline()) {
            sum += number(chain, x, y);
        }
        return cover.rule() == FillRule.EVEN_ODD ? sum % 2 != 0 : sum != 0;
    }

    /** The edges that a ray from the point to the right crosses, upward ones less downward ones. */
    static int number(Polyline chain, double x, double y) {
        int sum = 0;
        for (int i = 0, j = chain.size() - 1; i < chain.size(); j = i++) {
            boolean below = chain.y(j) <= y;
            if (below == (chain.y(i) <= y)) {
                continue;
            }
            double side = (chain.x(i) - chain.x(j)) * (y - chain.y(j)) - (x - chain.x(j)) * (chain.y(i) - chain.y(j));
            if (below ? side > 0 : side < 0) {
                sum += below ? 1 : -1;
            }
        }
        return sum;
    }
}
