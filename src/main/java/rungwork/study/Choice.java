package rungwork.study;

import rungwork.quantity.Kind;
import rungwork.quantity.Units;

/**
 * The lightest candidate that meets the checks made. Never to be named without what was not
 * checked, which {@link #line} sees to.
 *
 * @param outcome the chosen candidate's
 * @param equallyHeavy how many eligible candidates weigh the same, itself included; it leaves the
 *     frame the stiffest of them
 * @param eligible how many candidates were eligible
 * @param compared how many were compared
 */
public record Choice(Outcome.Assessed outcome, int equallyHeavy, int eligible, int compared) {
  /**
   * The choice, its reason, and what was not checked, in one line.
   *
   * @param units the reader's units
   * @return the line
   */
  public String line(Units units) {
    return outcome.candidate().name()
        + ": lightest meeting the checks made, with a frame of "
        + units.show(Kind.MASS, outcome.mass())
        + " ("
        + eligible
        + " of "
        + compared
        + " candidates eligible"
        + (equallyHeavy > 1 ? "; the stiffest of " + equallyHeavy + " equally heavy" : "")
        + "); the frame "
        + outcome.frame().verdictLine();
  }

  @Override
  public String toString() {
    return line(Units.METRIC);
  }
}
