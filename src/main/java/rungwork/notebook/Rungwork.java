package rungwork.notebook;

import java.util.Optional;
import rungwork.kernel.Evaluator;

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
    private volatile Optional<Evaluator> cells = Optional.empty();
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
    SESSION.cells.ifPresentOrElse(cells -> cells.display(value), () -> System.out.println(value));
  }

  /** Takes away what the running cell has put out so far. */
  public static void clearOutput() {
    SESSION.cells.ifPresent(Evaluator::clear);
  }

  /** From now on displayed values go to the cells of this evaluator. */
  static void begin(Evaluator cells) {
    SESSION.cells = Optional.of(cells);
  }
}
