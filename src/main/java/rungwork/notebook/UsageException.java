package rungwork.notebook;

/** A command line that cannot be understood; the message says what is wrong with it. */
final class UsageException extends RuntimeException {
  private static final long serialVersionUID = 1;

  UsageException(String message) {
    super(message);
  }
}
