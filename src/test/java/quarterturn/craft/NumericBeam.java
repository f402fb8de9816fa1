package quarterturn.craft;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * A neck by finite differences: {@code y'' = curvature} on a grid from the nut to the joint, where
 * height and slope are nothing; one system of linear equations, solved by another's library.
 */
final class NumericBeam {
  private final double joint;
  private final PolynomialSplineFunction heights;

  private NumericBeam(double joint, PolynomialSplineFunction heights) {
    this.joint = joint;
    this.heights = heights;
  }

  static NumericBeam bent(double joint, int cells, DoubleUnaryOperator curvature) {
    double h = joint / cells;
    RealMatrix matrix = new Array2DRowRealMatrix(cells + 1, cells + 1);
    double[] load = new double[cells + 1];
    double[] places = new double[cells + 1];
    for (int i = 0; i <= cells; i++) {
      places[i] = i == cells ? joint : i * h;
      if (i > 0 && i < cells) {
        matrix.setEntry(i - 1, i - 1, 1);
        matrix.setEntry(i - 1, i, -2);
        matrix.setEntry(i - 1, i + 1, 1);
        load[i - 1] = h * h * curvature.applyAsDouble(places[i]);
      }
    }
    matrix.setEntry(cells - 1, cells, 1);
    // The slope at the joint, one-sided and of second order.
    matrix.setEntry(cells, cells, 3);
    matrix.setEntry(cells, cells - 1, -4);
    matrix.setEntry(cells, cells - 2, 1);
    double[] solved =
        new LUDecomposition(matrix).getSolver().solve(new ArrayRealVector(load)).toArray();
    return new NumericBeam(joint, new SplineInterpolator().interpolate(places, solved));
  }

  double height(double x) {
    return x >= joint ? 0 : heights.value(x);
  }

  /** The gap over the middle place under a chord from the first to the last. */
  double gap(double from, double over, double to) {
    double share = (over - from) / (to - from);
    return height(from) * (1 - share) + height(to) * share - height(over);
  }
}
