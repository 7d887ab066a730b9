package rungwork.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;

/** The installed kernel as a person meets it: a Notebook server, a browser, keys and mouse. */
class NotebookServerTest {
  private static final String SESSION = "src/test/resources/rungwork/notebook/session.py";

  @Test
  void a_person_types_runs_completes_reads_interrupts_and_restarts(
      @TempDir(cleanup = CleanupMode.ON_SUCCESS) Path folder) throws IOException {
    External.need("Chromium", External.BROWSER, "--version");
    External.need("a Notebook server", External.PYTHON, "-c", "import notebook");
    External.Result result = Jupyter.python(SESSION, External.BROWSER, folder.toString());
    assertEquals(new External.Result(0, "OK\n"), result);
  }
}
