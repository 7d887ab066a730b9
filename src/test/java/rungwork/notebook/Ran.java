package rungwork.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

/**
 * A notebook that the runner has run: each once in a test run, as a run takes its time.
 *
 * @param executed the executed notebook
 * @param page its page
 */
record Ran(Path executed, Path page) {
  private static final Map<Path, Ran> ALL = new HashMap<>();

  static synchronized Ran notebook(Path notebook) throws IOException {
    Ran before = ALL.get(notebook);
    if (before != null) {
      return before;
    }
    Path out = Files.createTempDirectory("ran");
    PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream());
    assertEquals(
        0,
        new Commands(nowhere, nowhere, Surroundings.ofProcess(nowhere))
            .run("run", notebook.toString(), "--out", out.toString()));
    String name = notebook.getFileName().toString();
    Ran ran = new Ran(out.resolve(name), out.resolve(name.replace(".ipynb", ".html")));
    ALL.put(notebook, ran);
    return ran;
  }
}
