package rungwork.kernel;

/** How a cell ended. */
public enum CellEnd {
  /** Every statement ran. */
  FINISHED,
  /** A statement failed or the cell was stopped; names defined before it stay usable. */
  FAILED,
  /** The cell did not stop when asked to; the evaluator has to be given up with its names. */
  STUCK
}
