package rungwork.check;

import java.util.Arrays;
import rungwork.fault.Guard;
import rungwork.quantity.Units;

/**
 * One line of working: a formula with its numbers and what came out. It holds numbers only; text is
 * made when somebody asks for it.
 *
 * @param formula the formula
 * @param values the numbers put in, in the order of the formula's inputs, SI units
 * @param result what came out, SI unit
 */
public record Step(Formula formula, double[] values, double result) {
  /** Copies the values and refuses a wrong number of them. */
  public Step {
    formula.refuseOther(values.length);
    values = values.clone();
    for (int i = 0; i < values.length; i++) {
      refuseNotANumber(formula.inputs().get(i).meaning(), values[i]);
    }
    refuseNotANumber(formula.result().meaning(), result);
  }

  /** Infinite is a value: a divisor where nothing acts, the time of what never comes. */
  private static void refuseNotANumber(String what, double value) {
    if (Double.isNaN(value)) {
      Guard.solved(what, value);
    }
  }

  @Override
  public double[] values() {
    return values.clone();
  }

  /**
   * The line as an engineer writes it: letters, numbers with units, result.
   *
   * @param units the reader's units
   * @return such as {@code σ = N/A = 12.40 kN / 6.740 cm² = 18.40 MPa}
   */
  public String text(Units units) {
    String letter = formula.result().letter();
    String letters = formula.letters();
    return String.join(
        " = ",
        letter.equals(letters) ? letter : letter + " = " + letters,
        formula.filled(input -> units.show(input.kind(), value(input))),
        units.show(formula.result().kind(), result));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Step step
        && formula.equals(step.formula)
        && Arrays.equals(values, step.values)
        && Double.compare(result, step.result) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * formula.hashCode() + Arrays.hashCode(values);
  }

  @Override
  public String toString() {
    return text(Units.METRIC);
  }

  private double value(Symbol input) {
    return values[formula.inputs().indexOf(input)];
  }
}
