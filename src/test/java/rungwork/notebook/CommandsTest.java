package rungwork.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CommandsTest {
  private static final Path SMALL = Path.of("src/test/resources/rungwork/kernel/small.ipynb");

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @TempDir Path folder;

  private int run(String... arguments) {
    return new Commands(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8))
        .run(arguments);
  }

  private String firstComplaint() {
    return err.toString(StandardCharsets.UTF_8).lines().findFirst().orElse("");
  }

  @Test
  void a_notebook_is_run_and_the_terminal_says_where_its_page_is() {
    assertEquals(0, run("run", SMALL.toString(), "--out", folder.toString()));
    assertEquals(
        "small.ipynb: 6 cells ran\n  page: " + folder.resolve("small.html") + "\n",
        out.toString(StandardCharsets.UTF_8));
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
  void install_writes_a_kernel_that_needs_nothing_of_this_folder() throws IOException {
    assertEquals(0, run("install", "--prefix", folder.toString()));
    assertEquals(0, run("install", "--prefix", folder.toString())); // over the older copy
    Path kernel = folder.resolve("share/jupyter/kernels/rungwork");
    JsonObject spec =
        JsonParser.parseString(Files.readString(kernel.resolve("kernel.json"))).getAsJsonObject();
    JsonArray command = spec.getAsJsonArray("argv");
    assertTrue(Files.isExecutable(Path.of(command.get(0).getAsString())));
    for (String jar : command.get(2).getAsString().split(File.pathSeparator)) {
      assertTrue(jar.startsWith(kernel.toString()), jar);
      assertTrue(Files.isRegularFile(Path.of(jar)), jar);
    }
    assertEquals("{connection_file}", command.get(5).getAsString());
    assertEquals("message", spec.get("interrupt_mode").getAsString());
  }

  @Test
  void start_is_harmless_when_repeated_and_says_what_the_library_is_not() {
    String banner = Rungwork.start();
    assertEquals(banner, Rungwork.start());
    assertTrue(banner.contains("not an approval"));
  }
}
