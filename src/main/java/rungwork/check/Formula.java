package rungwork.check;

import java.util.List;

/**
 * A formula, standing once in the code next to its source. Text and number come from this one
 * place, so that the working shown and the number used cannot disagree.
 *
 * @param result what it gives
 * @param text its right-hand side with each input in braces, such as {@code {N}/{A} + {M}/{W}}; the
 *     letters in braces are those of the inputs
 * @param inputs its inputs, in the order that {@code evaluation} takes them, SI units
 * @param source standard and clause, handbook and section, or <em>common practice, no source</em>
 * @param evaluation the arithmetic, SI units in and out
 */
public record Formula(
    Symbol result, String text, List<Symbol> inputs, String source, Evaluation evaluation) {
  /** Copies its inputs. */
  public Formula {
    inputs = List.copyOf(inputs);
  }

  /**
   * Puts numbers in.
   *
   * @param values the inputs in order, SI units
   * @return the step, with its result
   */
  public Step with(double... values) {
    return new Step(this, values, evaluation.of(values));
  }

  /** The arithmetic of a formula. */
  @FunctionalInterface
  public interface Evaluation {
    /**
     * Evaluates.
     *
     * @param in the inputs in order, SI units
     * @return the result, SI unit
     */
    double of(double[] in);
  }
}
