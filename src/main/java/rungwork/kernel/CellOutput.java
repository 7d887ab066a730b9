package rungwork.kernel;

import java.util.List;

/** One thing that a cell puts out while it runs, in the order in which it came. */
public sealed interface CellOutput {
  /** The name of the ordinary text stream. */
  String OUT = "stdout";

  /** The name of the text stream for warnings. */
  String ERR = "stderr";

  /**
   * Text that the cell printed.
   *
   * @param stream {@link #OUT} or {@link #ERR}
   * @param text what was printed
   */
  record Text(String stream, String text) implements CellOutput {}

  /**
   * A value shown in the middle of a cell.
   *
   * @param bundle its forms
   * @param id the name under which it can be replaced later; empty if it stays as it is
   */
  record Display(MimeBundle bundle, String id) implements CellOutput {
    /** A value that stays as it is. */
    public Display(MimeBundle bundle) {
      this(bundle, "");
    }
  }

  /**
   * Replaces every value that was shown under the id, in whichever cell; without one, nothing.
   *
   * @param bundle the new forms
   * @param id the name under which the values were shown
   */
  record Update(MimeBundle bundle, String id) implements CellOutput {}

  /**
   * The value of the cell's last expression.
   *
   * @param bundle its forms
   */
  record Result(MimeBundle bundle) implements CellOutput {}

  /** What the cell put out so far is to be taken away. */
  record Clear() implements CellOutput {}

  /**
   * Why the cell failed.
   *
   * @param name the kind of failure, such as the exception's simple class name
   * @param message one sentence
   * @param trace the lines to show, which say the cell and line
   */
  record Failure(String name, String message, List<String> trace) implements CellOutput {
    /** Copies the lines. */
    public Failure {
      trace = List.copyOf(trace);
    }
  }
}
