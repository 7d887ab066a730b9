package rungwork.validation;

/** How an expected value reached this project. */
public enum Tag {
  /** The digits were read in the named source. */
  READ("read in the source"),
  /** The digits are recalled and were recomputed by an independent route. */
  MEMORY("from memory, recomputed"),
  /** The value follows by arithmetic from definitions. */
  IDENTITY("arithmetic identity"),
  /** The value comes from a second route of our own. */
  DERIVED("derived by a second route of our own");

  private final String words;

  Tag(String words) {
    this.words = words;
  }

  /**
   * The tag in words.
   *
   * @return for example {@code read in the source}
   */
  public String words() {
    return words;
  }
}
