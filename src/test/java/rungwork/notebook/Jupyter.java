package rungwork.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Programs of Jupyter that see this kernel, installed once in a test run, and nothing of the
 * user's.
 */
final class Jupyter {
  private static final int SECONDS = 600;

  private static Optional<Path> prefix = Optional.empty();

  private Jupyter() {}

  /** Runs Jupyter's Python to its end. */
  static External.Result python(String... arguments) throws IOException {
    List<String> command = new ArrayList<>(List.of(External.PYTHON));
    command.addAll(List.of(arguments));
    return External.run(environment(), SECONDS, command.toArray(String[]::new));
  }

  private static Map<String, String> environment() throws IOException {
    Path under = installed();
    return Map.of(
        "JUPYTER_PATH", under.resolve("share/jupyter").toString(),
        "JUPYTER_CONFIG_DIR", under.resolve("config").toString(),
        "JUPYTER_DATA_DIR", under.resolve("data").toString(),
        "JUPYTER_RUNTIME_DIR", under.resolve("runtime").toString(),
        "PYTHONDONTWRITEBYTECODE", "1");
  }

  private static synchronized Path installed() throws IOException {
    if (prefix.isEmpty()) {
      Path under = Files.createTempDirectory("jupyter");
      PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream());
      Commands commands = new Commands(nowhere, nowhere, Surroundings.ofProcess(nowhere));
      assertEquals(0, commands.run("install", "--prefix", under.toString()));
      prefix = Optional.of(under);
    }
    return prefix.orElseThrow();
  }
}
