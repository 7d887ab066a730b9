package rungwork.impact;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

/**
 * Between what and what a figure lies. Where an input is guessed, a single number would claim more
 * than is known.
 *
 * @param kind what it measures
 * @param low the least [SI unit of the kind]
 * @param high the most, not below the least [SI unit of the kind]
 */
public record Range(Kind kind, double low, double high) {
  private static final int DIGITS = 3;

  /** Ends that differ by less than this part are one number: rounding of double numbers. */
  private static final double ROUNDING = 1e-12;

  /** Refuses ends that are not finite or stand the wrong way round. */
  public Range {
    Guard.finite("low end of a " + kind.noun(), low);
    Guard.finite("high end of a " + kind.noun(), high);
    if (high < low) {
      Scale scale = Units.METRIC.scale(kind);
      throw new ModelException(
          "a "
              + kind.noun()
              + " from "
              + scale.show(low, DIGITS)
              + " to "
              + scale.show(high, DIGITS)
              + " stands the wrong way round; give the low end first");
    }
  }

  /**
   * A figure that is taken as known.
   *
   * @param kind what it measures
   * @param value the figure [SI unit of the kind]
   * @return a range without width
   */
  public static Range exactly(Kind kind, double value) {
    return new Range(kind, value, value);
  }

  /**
   * A range of bare numbers, such as a factor that is guessed.
   *
   * @param low the least
   * @param high the most
   * @return the range
   */
  public static Range ratio(double low, double high) {
    return new Range(Kind.RATIO, low, high);
  }

  /**
   * The range that just holds several figures.
   *
   * @param kind what they measure
   * @param values the figures [SI unit of the kind], at least one
   * @return from the least to the most
   */
  public static Range spanning(Kind kind, DoubleStream values) {
    double[] all = values.sorted().toArray();
    if (all.length == 0) {
      throw new ModelException("no figures of a " + kind.noun() + " to span; give one at least");
    }
    return new Range(kind, all[0], all[all.length - 1]);
  }

  /** What a monotone function gives at every combination of its inputs' ends. */
  static Range over(Kind kind, ToDoubleFunction<double[]> function, Range... inputs) {
    return spanning(kind, corners(List.of(inputs)).stream().mapToDouble(function));
  }

  /** One figure in the reader's units, three significant digits. */
  static String brief(Kind kind, double value, Units units) {
    return units.scale(kind).show(value, DIGITS);
  }

  private static List<double[]> corners(List<Range> inputs) {
    int count = 1 << inputs.size();
    double[][] corners = new double[count][inputs.size()];
    for (int i = 0; i < count; i++) {
      for (int j = 0; j < inputs.size(); j++) {
        Range input = inputs.get(j);
        corners[i][j] = (i >> j & 1) == 0 ? input.low : input.high;
      }
    }
    return Arrays.asList(corners);
  }

  /**
   * The range that just holds this one and another.
   *
   * @param other of the same kind
   * @return both together
   */
  public Range and(Range other) {
    return new Range(kind, Math.min(low, other.low), Math.max(high, other.high));
  }

  /**
   * Both ends times a factor.
   *
   * @param factor not negative
   * @return the range
   */
  public Range times(double factor) {
    return new Range(kind, low * factor, high * factor);
  }

  /** The same two numbers as something else, such as accelerations of one kilogram as forces. */
  Range kindOf(Kind other) {
    return new Range(other, low, high);
  }

  /**
   * Whether there is no width to it.
   *
   * @return true when both ends are the same
   */
  public boolean exact() {
    return high - low <= ROUNDING * Math.abs(high);
  }

  /**
   * The range in the reader's units, three significant digits.
   *
   * @param units the reader's units
   * @return for example {@code 18.3 to 22.0 g}
   */
  public String show(Units units) {
    Scale scale = units.scale(kind);
    String to = scale.show(high, DIGITS);
    return exact() ? to : scale.number(low, DIGITS) + " to " + to;
  }

  @Override
  public String toString() {
    return show(Units.METRIC);
  }
}
