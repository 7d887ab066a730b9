package rungwork.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Notebooks under another Java kernel: the JDK's own shell in a process that knows of the library
 * only the class path given to that shell.
 */
class PlainShellTest {
  private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");
  private static final Path SHELL =
      Path.of("src", "test", "resources", "rungwork", "notebook", "PlainShell.java");

  private static String json() {
    return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
        .filter(entry -> Path.of(entry).getFileName().toString().startsWith("gson"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void notebooks_bring_all_their_imports_along() throws IOException {
    External.Result result =
        External.run(
            Map.of(),
            300,
            JAVA.toString(),
            "-cp",
            json(),
            SHELL.toString(),
            System.getProperty("java.class.path"),
            "notebooks/01-crossmember-sizes.ipynb",
            "notebooks/03-mount-tab-braking.ipynb",
            "notebooks/04-where-it-gives-way.ipynb",
            "notebooks/07-after-the-gatepost.ipynb");
    assertEquals(0, result.status(), result.output());
    assertTrue(result.output().contains("ran 01-crossmember-sizes.ipynb"), result.output());
    assertTrue(result.output().contains("ran 04-where-it-gives-way.ipynb"), result.output());
    assertTrue(result.output().contains("ran 03-mount-tab-braking.ipynb"), result.output());
    assertTrue(result.output().contains("ran 07-after-the-gatepost.ipynb"), result.output());
  }
}
