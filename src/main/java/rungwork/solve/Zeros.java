package rungwork.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Where a smooth function crosses zero. A stable beam under a normal force bends through less than
 * one wave, so that {@value #STEPS} steps tell all crossings apart.
 */
final class Zeros {
  private static final int STEPS = 32;

  /** Halvings after which the place no longer changes. */
  private static final int HALVINGS = 52;

  private Zeros() {}

  /** The crossings strictly between two places, in rising order. */
  static List<Double> between(double from, double to, DoubleUnaryOperator function) {
    List<Double> zeros = new ArrayList<>();
    double step = (Math.nextDown(to) - from) / STEPS;
    for (int i = 0; i < STEPS; i++) {
      double left = from + i * step;
      double right = from + (i + 1) * step;
      if (function.applyAsDouble(left) < 0 != function.applyAsDouble(right) < 0) {
        zeros.add(crossing(left, right, function));
      }
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
