package rungwork.notebook;

import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toMap;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungwork.kernel.KernelSpec;

/** The installed kernel before real Jupyter clients. */
class RealJupyterTest {
  private static final Path RESOURCES = Path.of("src/test/resources/rungwork");

  @TempDir static Path folder;

  @BeforeAll
  static void look() {
    External.need(
        "Jupyter (nbconvert, jupyter_kernel_test)",
        External.PYTHON,
        "-c",
        "import jupyter_kernel_test, nbconvert, nbformat");
  }

  static Stream<Path> notebooks() throws IOException {
    Stream<Path> own = Stream.of(RESOURCES.resolve("kernel/small.ipynb"));
    Path shipped = Path.of("notebooks");
    if (!Files.isDirectory(shipped)) {
      return own;
    }
    try (Stream<Path> files = Files.list(shipped)) {
      List<Path> found = files.filter(file -> file.toString().endsWith(".ipynb")).sorted().toList();
      return Stream.concat(own, found.stream());
    }
  }

  @Test
  void the_published_conformance_suite_passes_three_times_in_a_row() throws IOException {
    for (int time = 1; time <= 3; time++) {
      conforms();
    }
  }

  private static void conforms() throws IOException {
    External.Result result =
        Jupyter.python(RESOURCES.resolve("notebook/conformance.py").toString());
    assertEquals(0, result.status(), result.output());
    List<String> skipped =
        result.output().lines().filter(line -> line.contains("skipped")).toList();
    assertTrue(
        skipped.stream().allMatch(line -> line.matches("test_pager.*|OK \\(skipped=1\\)")),
        () -> "skipped: " + skipped);
  }

  @Test
  void a_users_folder_is_where_jupyter_itself_looks() throws IOException {
    List<String> cases =
        List.of(
            "Linux HOME=/home/anna",
            "Linux HOME=/home/anna XDG_DATA_HOME=/xdg",
            "Linux HOME=/home/anna XDG_DATA_HOME=/xdg JUPYTER_DATA_DIR=/data",
            "Mac HOME=/Users/anna XDG_DATA_HOME=/xdg",
            "Windows HOME=/anna USERPROFILE=/anna APPDATA=/anna/Roaming XDG_DATA_HOME=/xdg",
            "Windows HOME=/anna USERPROFILE=/anna",
            "Windows HOME=/anna USERPROFILE=/anna JUPYTER_CONFIG_DIR=/conf");
    List<String> command = new ArrayList<>(cases);
    command.add(0, RESOURCES.resolve("notebook/folders.py").toString());
    String own = cases.stream().map(each -> userFolder(each) + "\n").collect(joining());
    assertEquals(new External.Result(0, own), Jupyter.python(command.toArray(String[]::new)));
  }

  private static Path userFolder(String where) {
    List<String> words = List.of(where.split(" "));
    Map<String, String> environment =
        words.stream()
            .skip(1)
            .map(variable -> variable.split("="))
            .collect(toMap(variable -> variable[0], variable -> variable[1]));
    return KernelSpec.userFolder(environment, words.get(0));
  }

  @Test
  void consoles_and_runners_of_jupyter_get_answers_too() throws IOException {
    External.need("the Jupyter console", External.PYTHON, "-c", "import jupyter_console");
    External.Result result = Jupyter.python(RESOURCES.resolve("notebook/clients.py").toString());
    assertEquals(0, result.status(), result.output());
    assertTrue(result.output().endsWith("\nOK\n"), result.output());
  }

  @Test
  void no_cell_breaks_the_kernel() throws IOException {
    External.Result result = Jupyter.python(RESOURCES.resolve("notebook/faults.py").toString());
    assertEquals(0, result.status(), result.output());
    assertTrue(result.output().endsWith("\nOK\n"), result.output());
  }

  @ParameterizedTest
  @MethodSource("notebooks")
  void jupyter_and_the_runner_put_out_the_same_text(Path notebook) throws IOException {
    Path byJupyter = folder.resolve("jupyter");
    External.Result result =
        Jupyter.python(
            "-m",
            "nbconvert",
            "--to",
            "notebook",
            "--execute",
            "--ExecutePreprocessor.kernel_name=rungwork",
            "--ExecutePreprocessor.timeout=300",
            "--output-dir",
            byJupyter.toString(),
            notebook.toString());
    assertEquals(0, result.status(), result.output());
    Path name = notebook.getFileName();
    List<String> texts = texts(Ran.notebook(notebook).executed());
    assertFalse(texts.isEmpty());
    assertEquals(texts(byJupyter.resolve(name)), texts);
  }

  @ParameterizedTest
  @MethodSource("notebooks")
  void what_the_runner_writes_is_valid_in_the_notebook_format(Path notebook) throws IOException {
    External.Result result =
        Jupyter.python(
            "-c",
            "import sys, nbformat; n = nbformat.read(sys.argv[1], as_version=nbformat.NO_CONVERT);"
                + " nbformat.validate(n); print(n.nbformat, n.nbformat_minor)",
            Ran.notebook(notebook).executed().toString());
    assertEquals(new External.Result(0, "4 5\n"), result);
  }

  /** Every plain text, printed or shown, cell by cell. */
  static List<String> texts(Path notebook) throws IOException {
    JsonObject root = JsonParser.parseString(Files.readString(notebook)).getAsJsonObject();
    List<String> texts = new ArrayList<>();
    for (JsonElement cell : root.getAsJsonArray("cells")) {
      JsonElement outputs = cell.getAsJsonObject().get("outputs");
      if (outputs == null) {
        continue;
      }
      for (JsonElement each : outputs.getAsJsonArray()) {
        JsonObject output = each.getAsJsonObject();
        JsonElement text =
            output.has("data")
                ? output.getAsJsonObject("data").get("text/plain")
                : output.get("text");
        texts.add(output.get("output_type").getAsString() + ": " + text);
      }
    }
    return texts;
  }
}
