package rungwork.fault;

/** The input is wrong: the message names the thing as the user named it, and what would do. */
public final class ModelException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * Refuses an input.
   *
   * @param message what is wrong, its value with the unit, and what would do
   */
  public ModelException(String message) {
    super(message);
  }
}
