package rungwork.check;

import java.util.List;

/**
 * The answer to one question about a loaded member, before the member's name, case and basis are
 * put to it.
 *
 * @param what what was checked
 * @param where the place on the member in words
 * @param verdict what was found
 * @param working the lines of the calculation
 * @param source standard and clause
 */
record Finding(String what, String where, Verdict verdict, List<Step> working, String source) {
  static final String WHOLE = "whole part";

  /** Nothing was found out, and why. */
  static Finding notChecked(String what, String reason, String source) {
    return new Finding(what, WHOLE, new Verdict.NotChecked(reason), List.of(), source);
  }

  /** The same, unless something puts the numbers in doubt. */
  Finding doubted(List<String> reasons) {
    return reasons.isEmpty() ? this : outside(String.join("; ", reasons));
  }

  /** The same numbers, but outside the range of the rule behind them. */
  Finding outside(String reason) {
    if (verdict instanceof Verdict.Measured numbers) {
      return new Finding(what, where, new Verdict.OutsideRange(numbers, reason), working, source);
    }
    return this;
  }
}
