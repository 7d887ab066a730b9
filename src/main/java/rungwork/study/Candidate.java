package rungwork.study;

import rungwork.fault.Guard;
import rungwork.frame.Stock;

/**
 * One of the stocks that a member could be cut from.
 *
 * @param name unique in its comparison
 * @param stock section and material
 */
public record Candidate(String name, Stock stock) {
  /** Refuses a candidate without a name. */
  public Candidate {
    name = Guard.name("candidate", name);
  }

  /**
   * A candidate named by its section.
   *
   * @param stock section and material
   * @return the candidate
   */
  public static Candidate of(Stock stock) {
    return new Candidate(stock.section().name(), stock);
  }
}
