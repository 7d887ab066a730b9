package rungwork.notebook;

import io.github.spencerpark.jupyter.kernel.BaseKernel;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicBoolean;
import rungwork.fault.ModelException;
import rungwork.kernel.Evaluator;
import rungwork.quantity.Units;
import rungwork.record.DesignRecord;
import rungwork.report.RecordDocument;
import rungwork.study.Study;

/**
 * What every notebook begins with, and the one place that remembers a running session: the reader's
 * units, the cells that displayed values go to, the folder that files go to. Nothing else in the
 * library is remembered rather than passed; the session belongs to the process, as a notebook does.
 */
public final class Rungwork {
  private static final Session SESSION = new Session();

  private static final class Session {
    private volatile Units units = Units.METRIC;
    private volatile Screen screen = Screen.PRINTED;
    private volatile Path folder = Path.of("");
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
   * From here on the values of this library show in another Java kernel as they do in its own: as
   * pages and pictures. The kernel must stand on the base that IJava stands on.
   *
   * @param kernel the running kernel, in IJava {@code getKernelInstance()}
   */
  public static void showIn(BaseKernel kernel) {
    SESSION.screen = new OtherKernel(kernel, Composition.displays());
  }

  /**
   * Shows a value here, in the middle of a cell; outside a notebook its text is printed.
   *
   * @param value anything
   */
  public static void display(Object value) {
    SESSION.screen.display(value);
  }

  /**
   * Shows a value here under an id, so that {@link #update} can replace it later; outside a
   * notebook its text is printed.
   *
   * @param id any name; a value shown under the same name before shows as this one from now on
   * @param value anything
   */
  public static void display(String id, Object value) {
    if (id.isEmpty()) {
      throw new ModelException("id of a displayed value is empty; give it a name");
    }
    SESSION.screen.display(value, id);
  }

  /**
   * Replaces what was shown under an id, in whichever cell; outside a notebook its text is printed.
   *
   * @param id the name that was given to {@link #display(String, Object)}
   * @param value what shows from now on
   */
  public static void update(String id, Object value) {
    SESSION.screen.update(value, id);
  }

  /**
   * A line in the cell that tells how far long work has come, for {@code Study.watchedBy}; outside
   * a notebook it is printed.
   *
   * @param what the work, in words; one of a name at a time
   * @return is told by the work
   */
  public static Study.Progress progress(String what) {
    String id = "progress of " + what;
    AtomicBoolean shown = new AtomicBoolean();
    return new ProgressBar(
        what,
        line -> {
          if (shown.getAndSet(true)) {
            update(id, line);
          } else {
            display(id, line);
          }
        });
  }

  /**
   * Saves a record beside the notebook, or beside its page where it runs without Jupyter: {@code
   * NAME.html} to read and print, {@code NAME-checks.csv} with all checks, {@code NAME.txt} in
   * plain text. Older files of the same name are replaced.
   *
   * @param record the record
   * @param name the files' name without an ending
   * @return which files were written
   */
  public static String save(DesignRecord record, String name) {
    return new SavedRecord(new RecordDocument(record, units(), Version.ofProgramAndData()), name)
        .write(SESSION.folder);
  }

  /** Takes away what the running cell has put out so far; in another Java kernel it stays. */
  public static void clearOutput() {
    SESSION.screen.clear();
  }

  /**
   * The reader's units, for text that a cell writes itself.
   *
   * @return as chosen at the start
   */
  public static Units units() {
    return SESSION.units;
  }

  /**
   * From now on displayed values go to these cells and files into this folder; the units are the
   * first choice again.
   */
  static void begin(Evaluator cells, Path folder) {
    SESSION.units = Units.METRIC;
    SESSION.folder = folder;
    SESSION.screen = Screen.of(cells);
  }
}
