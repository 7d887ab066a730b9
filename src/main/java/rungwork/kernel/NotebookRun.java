package rungwork.kernel;

import java.nio.file.Path;

/**
 * What a run of a notebook came to. Both files are written in every case.
 *
 * @param notebook the executed notebook
 * @param page the page
 * @param end how the last cell that ran ended
 * @param remark one sentence: how many cells ran, or which cell failed and why
 */
public record NotebookRun(Path notebook, Path page, CellEnd end, String remark) {
  /** Whether every cell ran to its end. */
  public boolean complete() {
    return end == CellEnd.FINISHED;
  }
}
