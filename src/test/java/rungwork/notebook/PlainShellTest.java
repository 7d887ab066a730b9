package rungwork.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
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

  private static Stream<String> lines(External.Result result, String start) {
    return result
        .output()
        .lines()
        .filter(line -> line.startsWith(start))
        .map(line -> line.substring(start.length()));
  }

  /** Whether a value shows as Java writes it and nobody reads it: an address, or all its fields. */
  private static boolean raw(String line) {
    return line.matches("[\\w.$/]+@[0-9a-f]+|\\w+\\[\\w+=.*");
  }

  @Test
  void notebooks_bring_all_their_imports_along_and_show_text_that_can_be_read() throws IOException {
    External.Result result =
        External.run(
            Map.of(),
            600,
            JAVA.toString(),
            "-cp",
            json(),
            SHELL.toString(),
            System.getProperty("java.class.path"),
            "notebooks/01-crossmember-sizes.ipynb",
            "notebooks/02-tube-or-channel.ipynb",
            "notebooks/03-mount-tab-braking.ipynb",
            "notebooks/04-where-it-gives-way.ipynb",
            "notebooks/05-rigid-or-crush.ipynb",
            "notebooks/07-after-the-gatepost.ipynb");
    assertEquals(0, result.status(), result.output());
    assertEquals(
        List.of("01", "02", "03", "04", "05", "07"),
        lines(result, "ran ").map(name -> name.substring(0, 2)).toList());
    assertEquals(List.of(), lines(result, "shows ").filter(PlainShellTest::raw).toList());
    assertTrue(
        lines(result, "shows ").anyMatch(line -> line.startsWith("Ladder Curlew: rails 2720 mm")),
        result.output());
  }
}
