package rungwork.check;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungwork.fault.ModelException;

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
  private static final Pattern LETTER = Pattern.compile("\\{([^{}]*)}");

  /** Refuses a text whose letters are not exactly the inputs. */
  public Formula {
    inputs = List.copyOf(inputs);
    refuseMismatch(text, inputs);
  }

  /**
   * Puts numbers in.
   *
   * @param values the inputs in order, SI units
   * @return the step, with its result
   */
  public Step with(double... values) {
    refuseOther(values.length);
    return new Step(this, values, evaluation.of(values));
  }

  /** Refuses another number of inputs than the formula has. */
  void refuseOther(int count) {
    if (count != inputs.size()) {
      throw new ModelException(
          "formula %s takes %d numbers; it was given %d".formatted(text, inputs.size(), count));
    }
  }

  /** The bare result, for searching where no working is wanted. */
  double value(double... values) {
    return evaluation.of(values);
  }

  /**
   * The formula with letters, such as {@code N/A + M/W}.
   *
   * @return its right-hand side
   */
  public String letters() {
    return LETTER.matcher(text).replaceAll("$1");
  }

  /**
   * The right-hand side with something in the place of each letter.
   *
   * @param shown what to put in an input's place; a number with a unit is put in parentheses where
   *     it is raised to a power or negative
   * @return such as {@code 12.4 kN / 6.74 cm²}
   */
  String filled(Function<Symbol, String> shown) {
    StringBuilder line = new StringBuilder();
    Matcher letter = LETTER.matcher(text);
    int done = 0;
    while (letter.find()) {
      line.append(spaced(text.substring(done, letter.start())));
      String value = shown.apply(named(letter.group(1)));
      line.append(needsParentheses(value, letter.end()) ? "(" + value + ")" : value);
      done = letter.end();
    }
    return line.append(spaced(text.substring(done))).toString();
  }

  private Symbol named(String letter) {
    return inputs.stream().filter(input -> input.letter().equals(letter)).findFirst().orElseThrow();
  }

  private boolean needsParentheses(String value, int next) {
    boolean raised = next < text.length() && "²³⁴^".indexOf(text.charAt(next)) >= 0;
    return value.startsWith("-") || raised && value.contains(" ");
  }

  private static String spaced(String between) {
    return between.replaceAll("\\s*([/·])\\s*", " $1 ");
  }

  private static void refuseMismatch(String text, List<Symbol> inputs) {
    List<String> known = new ArrayList<>(inputs.stream().map(Symbol::letter).toList());
    if (known.stream().distinct().count() < known.size()) {
      throw new ModelException("formula " + text + " has two inputs of the same letter");
    }
    List<String> used = LETTER.matcher(text).results().map(found -> found.group(1)).toList();
    for (String letter : used) {
      if (!known.contains(letter)) {
        throw new ModelException("formula " + text + " uses " + letter + ", which is no input");
      }
    }
    known.removeAll(used);
    if (!known.isEmpty()) {
      throw new ModelException("formula " + text + " does not use its input " + known.get(0));
    }
    if (LETTER.matcher(text).replaceAll("").matches(".*[{}].*")) {
      throw new ModelException("formula " + text + " has a brace without its partner");
    }
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
