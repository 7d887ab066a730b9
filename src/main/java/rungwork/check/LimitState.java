package rungwork.check;

/** What a check guards against. Bases do not mix: orders of failure rank only within one. */
public enum LimitState {
  /** First fibre at yield, or loss of stability by a yield-based rule. */
  YIELD("yield"),
  /** Rupture or collapse. */
  ULTIMATE("ultimate"),
  /** A maker's or a regulation's rating. */
  RATING("rating"),
  /** Repeated load. */
  FATIGUE("fatigue"),
  /** A limit on shape or proportion that a formula's range needs. */
  PROPORTION("limit of proportion");

  private final String words;

  LimitState(String words) {
    this.words = words;
  }

  /**
   * The limit state in words.
   *
   * @return for example {@code limit of proportion}
   */
  public String words() {
    return words;
  }
}
