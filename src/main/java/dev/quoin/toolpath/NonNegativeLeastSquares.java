package dev.quoin.toolpath;

import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;

/** Least squares whose unknowns are not below zero: a convex quadratic programme, which ojAlgo solves. */
final class NonNegativeLeastSquares {
    private NonNegativeLeastSquares() {}

    /**
     * The x, none below 0, for which {@code |A x - b|} is least.
     *
     * @param a rows of equal length; columns should be of about one size
     */
    static double[] solve(double[][] a, double[] b) {
        int unknowns = a[0].length;
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        for (int j = 0; j < unknowns; j++) {
            model.newVariable("x" + j).lower(0);
        }
        Expression squares = model.newExpression("squares").weight(1);
        for (int j = 0; j < unknowns; j++) {
            for (int k = 0; k < unknowns; k++) {
                squares.set(j, k, dot(a, j, k));
            }
            squares.set(j, -2 * dot(a, j, b));
        }
        Optimisation.Result result = model.minimise();
        double[] x = new double[unknowns];
        for (int j = 0; j < unknowns; j++) {
            x[j] = Math.max(0, result.doubleValue(j));
        }
        return x;
    }

    private static double dot(double[][] a, int j, int k) {
        double sum = 0;
        for (double[] row : a) {
            sum += row[j] * row[k];
        }
        return sum;
    }

    private static double dot(double[][] a, int j, double[] b) {
        double sum = 0;
        for (int i = 0; i < b.length; i++) {
            sum += a[i][j] * b[i];
        }
        return sum;
    }
}
