package rungwork.notebook;

import java.util.Optional;
import rungwork.kernel.Evaluator;
import rungwork.quantity.Units;

/**
 * What every notebook begins with, and the one place that remembers a running session: the reader's
 * units and the cells that displayed values go to. Nothing else in the library is remembered rather
 * than passed; the session belongs to the process, as a notebook does.
 */
public final class Rungwork {
  private static final Session SESSION = new Session();

  private static final class Session {
    private volatile Units units = Units.METRIC;
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

  /**
   * Begins a session whose results show in the given units from here on.
   *
   * @param units the reader's choice for the whole notebook
   * @return a line that says which version answers and what it is not
   */
  public static String start(Units units) {
    SESSION.units = units;
    return start();
  }

  /**
   * Shows a value here, in the middle of a cell; outside a notebook its text is printed.
   *
   * @param value anything
   */
  public static void display(Object value) {
    SESSION.cells.ifPresentOrElse(cells -> cells.display(value), () -> System.out.println(value));
  }

  /** Takes away what the running cell has put out so far. */
  public static void clearOutput() {
    SESSION.cells.ifPresent(Evaluator::clear);
  }

  /** The reader's units. */
  static Units units() {
    return SESSION.units;
  }

  /** From now on displayed values go to these cells; the units are the first choice again. */
  static void begin(Evaluator cells) {
    SESSION.units = Units.METRIC;
    SESSION.cells = Optional.of(cells);
  }
}
