package rungwork.section;

import java.util.function.DoubleUnaryOperator;

/** Integrals by Gauss and Legendre's rule of five points, exact to the ninth power. */
final class Gauss {
  private static final double[] PLACES = {
    -0.906179845938664, -0.5384693101056831, 0, 0.5384693101056831, 0.906179845938664
  };
  private static final double[] WEIGHTS = {
    0.23692688505618908,
    0.47862867049936647,
    0.5688888888888889,
    0.47862867049936647,
    0.23692688505618908
  };

  private Gauss() {}

  /** The mean of a function from 0 to 1. */
  static double mean(DoubleUnaryOperator function) {
    double sum = 0;
    for (int i = 0; i < PLACES.length; i++) {
      sum += WEIGHTS[i] / 2 * function.applyAsDouble((1 + PLACES[i]) / 2);
    }
    return sum;
  }
}
