package rungwork.check;

import rungwork.quantity.Kind;

/** What a check found: a measured utilisation, or that it could not be checked. Never "OK". */
public sealed interface Verdict {
  /**
   * Demand against capacity.
   *
   * @param demand what the load asks, SI unit, at least zero
   * @param capacity what the part can give, SI unit, above zero
   * @param kind what both measure
   */
  record Measured(double demand, double capacity, Kind kind) implements Verdict {
    /**
     * Demand over capacity; above 1 does not pass.
     *
     * @return the utilisation [1]
     */
    public double utilisation() {
      return demand / capacity;
    }
  }

  /**
   * Demand against capacity by a formula used outside its range: shown, but no pass.
   *
   * @param shown the numbers
   * @param outside what is outside which range, such as {@code outside EN 1993-1-8: throat 2.1 mm}
   */
  record OutsideRange(Measured shown, String outside) implements Verdict {}

  /**
   * Not checked.
   *
   * @param reason why, and what would be needed
   */
  record NotChecked(String reason) implements Verdict {}
}
