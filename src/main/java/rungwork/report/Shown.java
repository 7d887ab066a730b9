package rungwork.report;

import rungwork.quantity.Units;

/** Something to look at, once the reader's units are known. */
@FunctionalInterface
public interface Shown {
  /**
   * What it has to say.
   *
   * @param units the reader's units
   * @return its page
   */
  Page page(Units units);
}
