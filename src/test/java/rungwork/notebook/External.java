package rungwork.notebook;

import static org.junit.jupiter.api.Assumptions.abort;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** Programs outside the JVM that tests use where the machine has them; with CI=true it must. */
final class External {
  /** The system's Python: the first on the path may be one that knows nothing of Jupyter. */
  static final String PYTHON = "/usr/bin/python3";

  static final String BROWSER = "chromium";

  private External() {}

  /**
   * What a program left behind.
   *
   * @param status its exit status
   * @param output what it printed on both streams
   */
  record Result(int status, String output) {}

  /** Goes on if the program answers; else skips with the reason, or fails where CI=true. */
  static void need(String what, String... command) {
    boolean there;
    try {
      there = run(Map.of(), 60, command).status() == 0;
    } catch (IOException missing) {
      there = false;
    }
    if (!there && "true".equals(System.getenv("CI"))) {
      throw new AssertionError(what + " is needed where CI=true and is not on this machine");
    }
    if (!there) {
      abort("skipped: " + what + " is not on this machine");
    }
  }

  /** Runs a program to its end, at most so many seconds. */
  static Result run(Map<String, String> environment, int seconds, String... command)
      throws IOException {
    Path log = Files.createTempFile("external", ".log");
    try {
      ProcessBuilder builder = new ProcessBuilder(new ArrayList<>(List.of(command)));
      builder.environment().putAll(environment);
      Process process = builder.redirectErrorStream(true).redirectOutput(log.toFile()).start();
      if (!process.waitFor(seconds, TimeUnit.SECONDS)) {
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
        throw new AssertionError(
            String.join(" ", command)
                + " did not end in "
                + seconds
                + " s:\n"
                + Files.readString(log));
      }
      return new Result(process.exitValue(), Files.readString(log));
    } catch (InterruptedException e) {
      throw new IOException(e);
    } finally {
      Files.deleteIfExists(log);
    }
  }
}
