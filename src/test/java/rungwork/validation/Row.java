package rungwork.validation;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.Locale;

/**
 * One expected value beside the computed one.
 *
 * @param subject what was calculated, such as {@code 60×40×3}
 * @param source where the expected value stands
 * @param tag how it reached this project
 * @param quantity the quantity's letter or name
 * @param unit its unit; empty for a bare number
 * @param expected the value with exactly the digits that the source prints
 * @param computed Rungwork's value in the same unit
 * @param tolerance the largest relative error that passes; absolute when zero is expected
 */
record Row(
    String subject,
    String source,
    Tag tag,
    String quantity,
    String unit,
    String expected,
    double computed,
    double tolerance)
    implements Comparable<Row> {
  private static final Comparator<Row> ORDER =
      Comparator.comparing(Row::source)
          .thenComparing(Row::tag)
          .thenComparing(Row::subject)
          .thenComparing(Row::quantity)
          .thenComparing(Row::unit)
          .thenComparing(Row::expected)
          .thenComparingDouble(Row::computed)
          .thenComparingDouble(Row::tolerance);

  /** Half a unit of the last printed digit, relative to the printed value. */
  static double printedTolerance(String expected) {
    BigDecimal printed = new BigDecimal(expected);
    return relative(printed.ulp().doubleValue() / 2, printed.doubleValue());
  }

  private static double relative(double difference, double expected) {
    return expected == 0 ? Math.abs(difference) : Math.abs(difference / expected);
  }

  /** The relative error; the absolute one when zero is expected. */
  double relativeError() {
    double value = new BigDecimal(expected).doubleValue();
    return relative(computed - value, value);
  }

  /** Whether the error is within the tolerance; not-a-number never is. */
  boolean passes() {
    return relativeError() <= tolerance;
  }

  @Override
  public int compareTo(Row other) {
    return ORDER.compare(this, other);
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "%s, %s: expected %s %s, computed %.8g, relative error %.2e, tolerance %.2e; %s (%s)",
        subject,
        quantity,
        expected,
        unit,
        computed,
        relativeError(),
        tolerance,
        source,
        tag.words());
  }
}
