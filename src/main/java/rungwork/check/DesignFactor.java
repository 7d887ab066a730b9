package rungwork.check;

import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * By how much a capacity is divided before a load case may use it up.
 *
 * @param value the factor [1], at least 1
 * @param source where it comes from
 */
public record DesignFactor(double value, String source) {
  /** The whole capacity may be used: impact cases, which ask where the frame gives way. */
  public static final DesignFactor NONE = new DesignFactor(1, "none applied");

  /**
   * Factored road cases may use two thirds of yield (Brown, Robertson &amp; Serpento, Motor Vehicle
   * Structures, Butterworth-Heinemann 2002; from memory).
   */
  public static final DesignFactor ROAD =
      new DesignFactor(
          1.5,
          "two thirds of yield: Brown, Robertson & Serpento, Motor Vehicle Structures, 2002; from memory");

  /** Refuses a factor that would raise the capacity. */
  public DesignFactor {
    if (Guard.finite("design factor", value) < 1) {
      throw new ModelException(
          "design factor " + Scale.NUMBER.show(value) + " is below 1; it would raise the capacity");
    }
    source = Guard.name("source of a design factor", source);
  }

  /**
   * The basis of a check on yield that uses this factor.
   *
   * @return limit state and factors in words
   */
  public Basis onYield() {
    return new Basis(LimitState.YIELD, toString() + " on yield; γM0 = γM1 = 1.0");
  }

  @Override
  public String toString() {
    return "design factor " + Scale.NUMBER.number(value, 3) + " (" + source + ")";
  }
}
