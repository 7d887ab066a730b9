package rungwork.check;

/**
 * One line of working: a formula with its numbers and what came out.
 *
 * @param formula the formula
 * @param values the numbers put in, in the order of the formula's inputs, SI units
 * @param result what came out, SI unit
 */
public record Step(Formula formula, double[] values, double result) {
  /** Copies the values. */
  public Step {
    values = values.clone();
  }

  @Override
  public double[] values() {
    return values.clone();
  }
}
