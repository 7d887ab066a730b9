package rungwork.solve;

import java.util.Arrays;

/**
 * How many times an error in stiffness or load can come back in the motions: the condition of the
 * equations, each unknown first scaled so that its diagonal entry is 1, since metres and radians do
 * not compare.
 *
 * <p>The norm of the inverse is estimated from a few solutions (Hager, SIAM J. Sci. Stat. Comput. 5
 * (1984) 311–316, from memory): a lower bound, seldom below a third of the true one.
 */
final class Conditioning {
  /** Hager's steps; the estimate hardly grows after the second [1]. */
  private static final int STEPS = 5;

  private final BandFactor factor;
  private final int size;
  private double inverseNorm;
  private double[] softest;

  /**
   * Estimates.
   *
   * @param factor factorised equations
   */
  Conditioning(BandFactor factor) {
    this.factor = factor;
    size = factor.matrix().size();
    estimate();
  }

  private void estimate() {
    double[] load = new double[size];
    Arrays.fill(load, 1.0 / size);
    for (int step = 0; step < STEPS && size > 0; step++) {
      double[] motion = solved(load);
      double norm = Arrays.stream(motion).map(Math::abs).sum();
      if (norm > inverseNorm) {
        inverseNorm = norm;
        softest = motion;
      }
      double[] slope = solved(Arrays.stream(motion).map(Math::signum).toArray());
      int steepest = largest(slope);
      if (Math.abs(slope[steepest]) <= dot(slope, load)) {
        return;
      }
      Arrays.fill(load, 0);
      load[steepest] = 1;
    }
  }

  private double[] solved(double[] load) {
    double[] values = load.clone();
    scale(values);
    factor.solve(values);
    for (int i = 0; i < size; i++) {
      values[i] *= Math.sqrt(factor.diagonal(i));
    }
    return values;
  }

  private void scale(double[] values) {
    for (int i = 0; i < size; i++) {
      values[i] *= Math.sqrt(factor.diagonal(i));
    }
  }

  private static int largest(double[] values) {
    int at = 0;
    for (int i = 1; i < values.length; i++) {
      at = Math.abs(values[i]) > Math.abs(values[at]) ? i : at;
    }
    return at;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  /** The estimated norm of the scaled inverse [1]. */
  double inverseNorm() {
    return inverseNorm;
  }

  /** The motion that some load of size 1 makes largest: where the frame is softest. */
  double[] softest() {
    double[] motion = softest == null ? new double[size] : softest.clone();
    for (int i = 0; i < size; i++) {
      motion[i] /= Math.sqrt(factor.diagonal(i));
    }
    return motion;
  }
}
