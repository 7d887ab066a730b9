package rungwork.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.polynomials.PolynomialFunction;
import org.apache.commons.math3.analysis.polynomials.PolynomialFunctionLagrangeForm;

/**
 * Where a function that is a polynomial from break to break can be extreme: both ends, the breaks,
 * and the places between where its slope is nothing. Zeros of the slope are fenced in by those of
 * its own slope, and so on down to a straight line; none is missed.
 */
final class Stationary {
  /** Bisections from a whole piece down to the last double. */
  private static final int BISECTIONS = 60;

  private final DoubleUnaryOperator function;
  private final int degree;

  /**
   * A function over 0 to 1.
   *
   * @param function its value at a fraction
   * @param degree of its polynomials at most
   */
  Stationary(DoubleUnaryOperator function, int degree) {
    this.function = function;
    this.degree = degree;
  }

  /** The places, in rising order. */
  List<Double> places(double[] breaks) {
    TreeSet<Double> places = new TreeSet<>(List.of(0.0, 1.0));
    double from = 0;
    for (double to : breaks) {
      places.add(to);
      places.addAll(between(from, to));
      from = to;
    }
    places.addAll(between(from, 1));
    return List.copyOf(places);
  }

  private List<Double> between(double from, double to) {
    double[] at = new double[degree + 1];
    double[] values = new double[degree + 1];
    for (int i = 0; i <= degree; i++) {
      // Chebyshev's nodes, all inside: at the ends of a piece the function may jump.
      at[i] = -Math.cos(Math.PI * (i + 0.5) / (degree + 1));
      values[i] = function.applyAsDouble(from + (at[i] + 1) / 2 * (to - from));
    }
    double[] factors = new PolynomialFunctionLagrangeForm(at, values).getCoefficients();
    return zeros(new PolynomialFunction(factors).polynomialDerivative()).stream()
        .map(zero -> from + (zero + 1) / 2 * (to - from))
        .toList();
  }

  /** Where a polynomial changes its sign between −1 and 1. */
  private static List<Double> zeros(PolynomialFunction polynomial) {
    List<Double> fences = new ArrayList<>(List.of(-1.0));
    if (polynomial.degree() > 1) {
      fences.addAll(zeros(polynomial.polynomialDerivative()));
    }
    fences.add(1.0);
    List<Double> zeros = new ArrayList<>();
    for (int i = 1; i < fences.size(); i++) {
      double low = fences.get(i - 1);
      double high = fences.get(i);
      if (polynomial.value(low) * polynomial.value(high) < 0) {
        zeros.add(zero(polynomial, low, high));
      }
    }
    return zeros;
  }

  private static double zero(PolynomialFunction polynomial, double from, double to) {
    double low = from;
    double high = to;
    for (int i = 0; i < BISECTIONS; i++) {
      double middle = (low + high) / 2;
      if (polynomial.value(low) * polynomial.value(middle) <= 0) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return (low + high) / 2;
  }
}
