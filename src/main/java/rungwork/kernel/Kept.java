package rungwork.kernel;

/** What became of a snippet. */
sealed interface Kept {
  /** Nothing ran. */
  Kept NOTHING = new Nothing();

  /** The snippet was stopped from outside. */
  Kept STOPPED = new Stopped();

  /** The snippet threw; being stopped also arrives as a Throwable. */
  static Kept thrown(Throwable cause) {
    return cause instanceof ThreadDeath ? STOPPED : new Thrown(cause);
  }

  /** See {@link #NOTHING}. */
  record Nothing() implements Kept {}

  /** See {@link #STOPPED}. */
  record Stopped() implements Kept {}

  /**
   * The live value.
   *
   * @param value any object; null where the snippet had no value or the value was null
   */
  record Value(Object value) implements Kept {}

  /**
   * The live Throwable.
   *
   * @param cause what the snippet threw
   */
  record Thrown(Throwable cause) implements Kept {}
}
