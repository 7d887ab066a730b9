package rungwork.check;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One question asked of one part under one load case, with its answer and the working behind it.
 *
 * @param what what was checked, such as {@code combined stress}
 * @param part the part, such as {@code front crossmember}
 * @param where the place on it in words without units, such as {@code at front left, top left
 *     corner}
 * @param loadCase the load case's name
 * @param basis limit state and factors inside
 * @param verdict what was found
 * @param working the lines of the calculation, in order
 * @param source standard and clause of the rule as a whole
 * @param caution what this check does not see; empty when the sheet's caution says it all
 */
public record Check(
    String what,
    String part,
    String where,
    String loadCase,
    Basis basis,
    Verdict verdict,
    List<Step> working,
    String source,
    String caution) {
  /** Copies the working. */
  public Check {
    working = List.copyOf(working);
  }

  /**
   * Demand over capacity, also where the formula ran outside its range.
   *
   * @return the utilisation [1], or nothing when it was not checked
   */
  public OptionalDouble utilisation() {
    return verdict
        .numbers()
        .map(numbers -> OptionalDouble.of(numbers.utilisation()))
        .orElse(OptionalDouble.empty());
  }

  /**
   * Whether the demand is above the capacity. A number over 1 from a formula outside its range
   * counts too: it can support no pass.
   *
   * @return true when it does not pass
   */
  public boolean fails() {
    return utilisation().orElse(0) > 1;
  }

  /**
   * Whether demand and capacity were compared within the formula's range.
   *
   * @return false when it was not checked, or outside its range
   */
  public boolean made() {
    return verdict instanceof Verdict.Measured;
  }
}
