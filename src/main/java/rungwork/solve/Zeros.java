package rungwork.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;

/**
 * Where smooth functions cross zero. A stable beam under a normal force bends through less than one
 * wave, so that {@value #STEPS} steps tell all crossings apart.
 */
final class Zeros {
  private static final int STEPS = 32;

  /** Halvings after which the place no longer changes. */
  private static final int HALVINGS = 52;

  private Zeros() {}

  /**
   * The crossings of several functions strictly between two places.
   *
   * @param functions their values at a place
   */
  static List<Double> between(double from, double to, DoubleFunction<double[]> functions) {
    List<Double> zeros = new ArrayList<>();
    double step = (Math.nextDown(to) - from) / STEPS;
    double[] before = functions.apply(from);
    for (int i = 1; i <= STEPS; i++) {
      double[] now = functions.apply(from + i * step);
      for (int which = 0; which < now.length; which++) {
        if (before[which] < 0 != now[which] < 0) {
          int crossed = which;
          zeros.add(
              crossing(
                  from + (i - 1) * step,
                  from + i * step,
                  place -> functions.apply(place)[crossed]));
        }
      }
      before = now;
    }
    return zeros;
  }

  private static double crossing(double left, double right, DoubleUnaryOperator function) {
    boolean rising = function.applyAsDouble(left) < 0;
    double low = left;
    double high = right;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (function.applyAsDouble(middle) < 0 == rising) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }
}
