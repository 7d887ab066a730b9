package rungwork.record;

/** Where a datum of the vehicle comes from, the most trustworthy first. */
public enum Origin {
  /** Somebody held a tape, a caliper or a scale to it. */
  MEASURED("measured"),
  /** A drawing, a certificate or a data sheet says so; the metal was not looked at. */
  DRAWING("from a drawing"),
  /** Somebody thinks so. */
  GUESSED("guessed"),
  /** Nobody said; to be counted as guessed. */
  NOT_STATED("not stated");

  private final String words;

  Origin(String words) {
    this.words = words;
  }

  /**
   * The origin in words.
   *
   * @return for example {@code from a drawing}
   */
  public String words() {
    return words;
  }

  /**
   * Whether nobody has seen it written or held a tape to it.
   *
   * @return true where it should be measured next
   */
  public boolean open() {
    return this == GUESSED || this == NOT_STATED;
  }
}
