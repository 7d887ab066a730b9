package rungwork.fault;

/** The numbers failed: a mechanism, a singular matrix, a residual that is too large. */
public final class SolveException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * Refuses to return a result that cannot be trusted.
   *
   * @param message what failed, where, and what would help
   */
  public SolveException(String message) {
    super(message);
  }
}
