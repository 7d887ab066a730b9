package rungwork.study;

import javax.measure.Quantity;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.quantity.Kind;
import rungwork.quantity.Quantities;
import rungwork.quantity.Units;

/**
 * A number of a design that is not exactly known, or that may be chosen: its value, how it spreads
 * and who says so.
 *
 * @param name unique in its study
 * @param kind what it measures
 * @param value as designed [SI]
 * @param spread how it spreads
 * @param source where the spread is from: a standard's tolerance, measurements, or {@value
 *     #ASSUMED}
 */
public record Input(String name, Kind kind, double value, Spread spread, String source) {
  /** Source of a spread that nobody measured. */
  public static final String ASSUMED = "assumed";

  /** Refuses an input without a name or a source, and a value outside the spread's ends. */
  public Input {
    name = Guard.name("input", name);
    Guard.finite("input " + name, value);
    source = Guard.name("source of the spread of " + name, source);
    if (spread instanceof Spread.Even || spread instanceof Spread.Triangle) {
      refuseOutside(name, kind, value, spread);
    }
  }

  private static void refuseOutside(String name, Kind kind, double value, Spread spread) {
    if (value < spread.low() || value > spread.high()) {
      throw new ModelException(
          "input %s of %s lies outside its spread from %s to %s"
              .formatted(
                  name,
                  Units.METRIC.show(kind, value),
                  Units.METRIC.show(kind, spread.low()),
                  Units.METRIC.show(kind, spread.high())));
    }
  }

  /**
   * A typed number, still without a spread.
   *
   * @param name unique in its study
   * @param value as designed
   * @return asks for its spread
   */
  public static Unspread of(String name, Quantity<?> value) {
    return new Unspread(name, Quantities.kind(name, value), Quantities.si(name, value));
  }

  /**
   * A bare number such as a load factor, still without a spread.
   *
   * @param name unique in its study
   * @param value as designed [1]
   * @return asks for its spread
   */
  public static Unspread of(String name, double value) {
    return new Unspread(name, Kind.NUMBER, value);
  }

  @Override
  public String toString() {
    return "%s: %s, %s, %s to %s (%s)"
        .formatted(
            name,
            Units.METRIC.show(kind, value),
            spread.words(),
            Units.METRIC.show(kind, spread.low()),
            Units.METRIC.show(kind, spread.high()),
            source);
  }

  /**
   * An input whose spread is still to be said.
   *
   * @param name unique in its study
   * @param kind what it measures
   * @param value as designed [SI]
   */
  public record Unspread(String name, Kind kind, double value) {
    /** Refuses a number that is not finite. */
    public Unspread {
      name = Guard.name("input", name);
      Guard.finite("input " + name, value);
    }

    /**
     * A tolerance to both sides, all values in it alike.
     *
     * @param part of the value, above zero [1]: 0.1 for ±10 %
     * @param source who says so
     * @return the input
     */
    public Input within(double part, String source) {
      Guard.positive("tolerance of " + name, part, Scale.NUMBER);
      double margin = Math.abs(value) * part;
      return spread(new Spread.Even(value - margin, value + margin), source);
    }

    /**
     * Ends, all values between them alike.
     *
     * @param low lower end
     * @param high upper end
     * @param source who says so
     * @return the input
     */
    public Input between(Quantity<?> low, Quantity<?> high, String source) {
      return spread(new Spread.Even(si(low), si(high)), source);
    }

    /**
     * Normal about the value.
     *
     * @param variation standard deviation over the value, above zero [1]
     * @param source who says so
     * @return the input
     */
    public Input normal(double variation, String source) {
      return spread(new Spread.Normal(value, variation * Math.abs(value)), source);
    }

    /**
     * Lognormal with the value as its mean.
     *
     * @param variation standard deviation over mean, above zero [1]
     * @param source who says so
     * @return the input
     */
    public Input lognormal(double variation, String source) {
      return spread(new Spread.Lognormal(value, variation), source);
    }

    /**
     * Any spread.
     *
     * @param spread how it spreads [SI]
     * @param source who says so
     * @return the input
     */
    public Input spread(Spread spread, String source) {
      return new Input(name, kind, value, spread, source);
    }

    private double si(Quantity<?> end) {
      if (Quantities.kind(name, end) != kind) {
        throw new ModelException(
            "input %s is a %s; its end %s is not"
                .formatted(name, kind.noun(), Units.METRIC.show(end)));
      }
      return Quantities.si(name, end);
    }
  }
}
