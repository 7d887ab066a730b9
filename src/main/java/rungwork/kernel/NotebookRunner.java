package rungwork.kernel;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * Runs a notebook without Jupyter: a file in the notebook format 4 goes in; the executed notebook
 * in format 4.5 and a self-contained page come out.
 *
 * <p>As Jupyter's own runner does by default, it skips empty cells and stops at the first cell that
 * fails, unless the cell is tagged {@code raises-exception}.
 */
public final class NotebookRunner {
  private final Evaluator evaluator;
  private final PageStyle style;
  private final Duration limit;
  private final Consumer<Progress> progress;

  /**
   * How far a run has come.
   *
   * @param cell the cell that begins now, from 1
   * @param of how many cells will run
   * @param soFar time since the first began
   */
  public record Progress(int cell, int of, Duration soFar) {}

  /** A runner of one notebook with a fresh evaluator, a look, and a time limit a cell. */
  public NotebookRunner(Evaluator evaluator, PageStyle style, Duration limit) {
    this(evaluator, style, limit, begun -> {});
  }

  /** A runner that also tells each cell that begins. */
  public NotebookRunner(
      Evaluator evaluator, PageStyle style, Duration limit, Consumer<Progress> progress) {
    this.evaluator = evaluator;
    this.style = style;
    this.limit = limit;
    this.progress = progress;
  }

  /**
   * Runs the notebook and writes {@code NAME.ipynb} and {@code NAME.html} into the folder.
   *
   * @throws IllegalArgumentException if the file is no notebook of format 4
   */
  public NotebookRun run(Path file, Path folder) throws IOException {
    NotebookFile notebook = NotebookFile.read(file);
    CellEnd end = CellEnd.FINISHED;
    String remark = "";
    int count = 0;
    List<Ran> ran = new ArrayList<>();
    Instant begun = Instant.now();
    int of = (int) notebook.codeCells().stream().filter(cell -> hasCode(notebook, cell)).count();
    for (JsonObject cell : notebook.codeCells()) {
      notebook.clear(cell);
      if (end != CellEnd.FINISHED || !hasCode(notebook, cell)) {
        continue;
      }
      count++;
      progress.accept(new Progress(count, of, Duration.between(begun, Instant.now())));
      List<CellOutput> outputs = Collections.synchronizedList(new ArrayList<>());
      end = evaluator.run(new Cell(count, notebook.source(cell)), limit, outputs::add);
      ran.add(new Ran(cell, count, outputs));
      if (end == CellEnd.FAILED && notebook.mayFail(cell)) {
        end = CellEnd.FINISHED;
      }
      remark = end == CellEnd.FINISHED ? count + " cells ran" : remark(count, outputs);
    }
    fill(notebook, ran);
    return written(notebook, folder, end, remark);
  }

  private static boolean hasCode(NotebookFile notebook, JsonObject cell) {
    return !notebook.source(cell).isBlank();
  }

  /** A cell that ran, with its count and outputs. */
  private record Ran(JsonObject cell, int count, List<CellOutput> outputs) {}

  /** A value shown under an id shows as the latest of that id, as in Jupyter. */
  private static void fill(NotebookFile notebook, List<Ran> ran) {
    Map<String, MimeBundle> latest = new HashMap<>();
    for (Ran each : ran) {
      for (CellOutput output : List.copyOf(each.outputs())) {
        if (output instanceof CellOutput.Display display) {
          latest.put(display.id(), display.bundle());
        } else if (output instanceof CellOutput.Update update) {
          latest.put(update.id(), update.bundle());
        }
      }
    }
    latest.remove("");
    for (Ran each : ran) {
      List<CellOutput> outputs =
          List.copyOf(each.outputs()).stream()
              .filter(output -> !(output instanceof CellOutput.Update))
              .map(output -> renewed(output, latest))
              .toList();
      notebook.fill(each.cell(), each.count(), outputs);
    }
  }

  private static CellOutput renewed(CellOutput output, Map<String, MimeBundle> latest) {
    return output instanceof CellOutput.Display display
        ? new CellOutput.Display(latest.getOrDefault(display.id(), display.bundle()), display.id())
        : output;
  }

  private NotebookRun written(NotebookFile notebook, Path folder, CellEnd end, String remark)
      throws IOException {
    Files.createDirectories(folder);
    Path executed = folder.resolve(notebook.name() + ".ipynb");
    Path page = folder.resolve(notebook.name() + ".html");
    Files.writeString(executed, notebook.json());
    Files.writeString(page, new HtmlPage(notebook, style).text());
    return new NotebookRun(executed, page, end, remark);
  }

  private static String remark(int count, List<CellOutput> outputs) {
    String why =
        outputs.stream()
            .filter(CellOutput.Failure.class::isInstance)
            .map(CellOutput.Failure.class::cast)
            .map(failure -> failure.name() + ": " + failure.message())
            .reduce("", (earlier, later) -> later);
    return "cell [" + count + "] failed: " + why;
  }
}
