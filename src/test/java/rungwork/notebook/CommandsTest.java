package rungwork.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CommandsTest {
  private static final Path SMALL = Path.of("src/test/resources/rungwork/kernel/small.ipynb");

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @TempDir Path folder;

  private final List<String> live = new ArrayList<>();

  private int run(String... arguments) {
    return new Commands(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            new Surroundings(Map.of(), "Linux", live::add))
        .run(arguments);
  }

  private String said() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private String firstComplaint() {
    return err.toString(StandardCharsets.UTF_8).lines().findFirst().orElse("");
  }

  @Test
  void a_notebook_is_run_and_the_terminal_says_where_its_page_is() {
    assertEquals(0, run("run", SMALL.toString(), "--out", folder.toString()));
    assertEquals(
        "small.ipynb: 6 cells ran, S s\n  page: " + folder.resolve("small.html") + "\n",
        said().replaceFirst("\\d+\\.\\d s", "S s"));
    assertEquals(
        List.of(1, 2, 3, 4, 5, 6).stream()
            .map(n -> "small.ipynb: cell " + n + " of 6, S s")
            .toList(),
        live.subList(0, 6).stream().map(line -> line.replaceFirst("\\d+ s$", "S s")).toList());
    assertEquals(List.of(""), live.subList(6, live.size()));
    assertTrue(Files.isRegularFile(folder.resolve("small.html")));
    assertTrue(Files.isRegularFile(folder.resolve("small.ipynb")));
  }

  @Test
  void a_failed_cell_gives_status_1() throws IOException {
    Path file = folder.resolve("broken.ipynb");
    Files.writeString(
        file, Files.readString(SMALL).replace("bars.get(5)", "nonsense").replace("raises", "x"));
    assertEquals(1, run("run", "--out", folder.resolve("o").toString(), file.toString()));
    assertTrue(out.toString(StandardCharsets.UTF_8).startsWith("broken.ipynb: cell [4] failed: "));
  }

  @Test
  void a_file_that_is_no_notebook_gives_status_1() throws IOException {
    Path file = Files.writeString(folder.resolve("a.ipynb"), "{ no");
    assertEquals(1, run("run", file.toString(), "--out", folder.toString()));
    assertEquals(file + " is no notebook: it does not hold JSON", firstComplaint());
  }

  @Test
  void a_command_that_cannot_be_understood_gives_status_2_and_says_why() {
    assertEquals(2, run("fly"));
    assertEquals("there is no command fly", firstComplaint());
    assertEquals(2, run("run", SMALL.toString()));
    assertEquals(2, run("run", "--out", "x"));
    assertEquals(2, run("run", "none.ipynb", "--out", "x"));
    assertEquals(2, run("run", SMALL.toString(), "--out", "x", "--cell-timeout", "0"));
    assertEquals(2, run("run", SMALL.toString(), "--out", "x", "--fast"));
    assertEquals(2, run("install", "--prefix"));
    String complaints = err.toString(StandardCharsets.UTF_8);
    assertTrue(complaints.contains("--out is missing"), complaints);
    assertTrue(complaints.contains("a notebook file is missing"), complaints);
    assertTrue(complaints.contains("there is no file none.ipynb"), complaints);
    assertTrue(complaints.contains("--cell-timeout 0 is no whole number of seconds"), complaints);
    assertTrue(complaints.contains("cannot use --fast"), complaints);
    assertTrue(complaints.contains("--prefix needs a value after it"), complaints);
  }

  @Test
  void help_names_every_command() {
    assertEquals(0, run("--help"));
    assertEquals(0, run("help"));
    assertEquals(
        """
        commands:
          (none)                                       run every notebook in notebooks/
          run FILE.ipynb --out DIR [--cell-timeout S]  run one notebook; S in whole seconds
          install [--user | --prefix DIR] [--name N]   put the kernel where Jupyter finds it
          uninstall [--user | --prefix DIR] [--name N] take the kernel away again
                                                       --user is meant where neither is given
        """
            .repeat(2),
        said());
  }

  @Test
  void start_is_harmless_when_repeated_and_says_what_the_library_is_not() {
    String banner = Rungwork.start();
    assertEquals(banner, Rungwork.start());
    assertTrue(banner.contains("not an approval"));
  }
}
