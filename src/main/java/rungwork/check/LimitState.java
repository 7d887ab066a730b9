package rungwork.check;

/** What a check guards against. Bases do not mix: orders of failure rank only within one. */
public enum LimitState {
  /** First fibre at yield, or loss of stability by a yield-based rule. */
  YIELD,
  /** Rupture or collapse. */
  ULTIMATE,
  /** A maker's or a regulation's rating. */
  RATING,
  /** Repeated load. */
  FATIGUE,
  /** A limit on shape or proportion that a formula's range needs. */
  PROPORTION
}
