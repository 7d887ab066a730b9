package rungwork.notebook;

import java.util.Optional;
import java.util.function.Consumer;

/**
 * What every notebook begins with, and the one place that remembers a running session.
 *
 * <p>The session is all that is not passed from hand to hand: where displayed values go. A session
 * belongs to the process, as the notebook does.
 */
public final class Rungwork {
  private static final Session SESSION = new Session();

  /** The state of the running session. */
  private static final class Session {
    private volatile Optional<Consumer<Object>> sink = Optional.empty();
  }

  private Rungwork() {}

  /**
   * Begins a session; harmless where one has begun.
   *
   * @return a line that says which version answers and what it is not
   */
  public static String start() {
    return Version.banner();
  }

  /** Shows a value here, in the middle of a cell; outside a notebook its text is printed. */
  public static void display(Object value) {
    SESSION.sink.ifPresentOrElse(sink -> sink.accept(value), () -> System.out.println(value));
  }

  /** From now on displayed values go to the sink. */
  static void showOn(Consumer<Object> sink) {
    SESSION.sink = Optional.of(sink);
  }
}
