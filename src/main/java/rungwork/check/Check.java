package rungwork.check;

import java.util.List;

/**
 * One question asked of one part under one load case, with its answer and the working behind it.
 *
 * @param what what was checked, such as {@code combined stress}
 * @param part the part, such as {@code front crossmember}
 * @param where the place on it, such as {@code 0.120 m from its left end, top left corner}
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
}
