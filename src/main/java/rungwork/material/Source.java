package rungwork.material;

/**
 * Where a figure comes from.
 *
 * @param reference standard and edition, handbook and section, or <em>common practice, no
 *     source</em>
 * @param tag how it reached this project
 */
public record Source(String reference, Tag tag) {
  /** How a figure reached this project. */
  public enum Tag {
    /** Read in the named source. */
    READ("read in the source"),
    /** Read in another text that names the source. */
    SECOND_HAND("second-hand"),
    /** Recalled; the page was not at hand. */
    FROM_MEMORY("from memory"),
    /** Given by the user, who answers for it. */
    STATED_BY_USER("stated by the user");

    private final String words;

    Tag(String words) {
      this.words = words;
    }

    /**
     * The tag in words.
     *
     * @return for example {@code from memory}
     */
    public String words() {
      return words;
    }
  }

  @Override
  public String toString() {
    return reference + " (" + tag.words() + ")";
  }
}
