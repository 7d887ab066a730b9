package rungwork.record;

import java.util.List;

/**
 * A sentence that several sources may make, said once.
 *
 * @param words the sentence
 * @param from who says it: labels of evidence such as {@code E1}, {@link #AUTHOR} or {@link
 *     #ALWAYS}
 */
public record Statement(String words, List<String> from) {
  /** Said by whoever keeps the record. */
  public static final String AUTHOR = "author";

  /** Said by every record. */
  public static final String ALWAYS = "every record";

  /** Copies the sources. */
  public Statement {
    from = List.copyOf(from);
  }
}
