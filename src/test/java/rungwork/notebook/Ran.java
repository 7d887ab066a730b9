package rungwork.notebook;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rungwork.kernel.CellOutput;
import rungwork.kernel.Evaluator;
import rungwork.kernel.NotebookRun;
import rungwork.kernel.NotebookRunner;

/**
 * A notebook that the runner has run: each once in a test run, as a run takes its time.
 *
 * @param executed the executed notebook
 * @param page its page
 * @param shown the values that its cells displayed, as they live
 * @param inInches what its quick cells put out when the line at the top chooses inch-pound units
 */
record Ran(Path executed, Path page, List<Object> shown, List<CellOutput> inInches) {
  private static final Map<Path, Ran> ALL = new HashMap<>();

  static synchronized Ran notebook(Path notebook) throws IOException {
    Ran before = ALL.get(notebook);
    if (before != null) {
      return before;
    }
    Ran ran = run(notebook);
    ALL.put(notebook, ran);
    return ran;
  }

  private static Ran run(Path notebook) throws IOException {
    Path out = Files.createTempDirectory("ran");
    List<Object> shown = Collections.synchronizedList(new ArrayList<>());
    try (Evaluator evaluator = new Evaluator(Composition.setup(shown::add))) {
      Rungwork.begin(evaluator, out);
      QuickCells quick = new QuickCells(notebook);
      NotebookRun run =
          new NotebookRunner(evaluator, Composition.style(), Duration.ofMinutes(10), quick::begins)
              .run(notebook, out);
      quick.ends();
      assertTrue(run.complete(), run::remark);
      List<Object> inMetric = List.copyOf(shown);
      String name = notebook.getFileName().toString();
      return new Ran(out.resolve(name), run.page(), inMetric, quick.inInches(evaluator));
    }
  }
}
