package rungwork.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A notebook file goes in; an executed notebook and a page come out. */
class NotebookRunnerTest {
  private static final String NOTEBOOK =
      "{\"nbformat\":%s,\"nbformat_minor\":4,\"metadata\":{\"title\":\"kept\"},\"cells\":[%s]}";

  @TempDir Path folder;

  private NotebookRun run(String... sources) throws IOException {
    StringBuilder cells = new StringBuilder();
    for (String source : sources) {
      JsonObject cell = new JsonObject();
      String type = source.startsWith("#") ? "markdown" : "code";
      cell.addProperty("cell_type", type);
      cell.add("metadata", new JsonObject());
      cell.addProperty("source", source);
      cells.append(cells.isEmpty() ? "" : ",").append(cell);
    }
    return runFile(Files.writeString(folder.resolve("it.ipynb"), NOTEBOOK.formatted("4", cells)));
  }

  private NotebookRun runFile(Path file) throws IOException {
    DisplayRegistry displays =
        DisplayRegistry.plain()
            .with(
                Duration.class,
                value -> MimeBundle.text("a duration").svg("<?xml version=\"1.0\"?>\n<svg>d</svg>"))
            .with(Path.class, value -> MimeBundle.text("a path").html("<b>path</b>"));
    EvaluatorSetup setup =
        new EvaluatorSetup(List.of("import java.util.*;"), displays, List.of(), value -> {});
    try (Evaluator evaluator = new Evaluator(setup)) {
      EvaluatorTest.Hook.target = evaluator;
      PageStyle style = new PageStyle(".own { color: #123456 }", "the <i>footer</i>");
      return new NotebookRunner(evaluator, style, Duration.ofSeconds(2))
          .run(file, folder.resolve("out"));
    }
  }

  private static JsonArray cells(NotebookRun run) throws IOException {
    return JsonParser.parseString(Files.readString(run.notebook()))
        .getAsJsonObject()
        .getAsJsonArray("cells");
  }

  private static JsonObject output(NotebookRun run, int cell, int output) throws IOException {
    return cells(run)
        .get(cell)
        .getAsJsonObject()
        .getAsJsonArray("outputs")
        .get(output)
        .getAsJsonObject();
  }

  @Test
  void outputs_and_counts_are_kept_and_the_rest_stays() throws IOException {
    NotebookRun run = run("# A title", "int a = 2;", "", "System.out.println(\"x\");\na * 3");
    assertTrue(run.complete());
    assertEquals("2 cells ran", run.remark());
    assertEquals("stream", output(run, 3, 0).get("output_type").getAsString());
    assertEquals("[\"x\\n\"]", output(run, 3, 0).get("text").toString());
    assertEquals("2", output(run, 3, 1).get("execution_count").toString());
    assertEquals("[\"6\"]", output(run, 3, 1).getAsJsonObject("data").get("text/plain").toString());
    assertTrue(cells(run).get(2).getAsJsonObject().get("execution_count").isJsonNull());
    assertTrue(Files.readString(run.notebook()).contains("\"title\": \"kept\""));
  }

  @Test
  void every_cell_has_an_id_of_its_own_as_format_4_5_wants() throws IOException {
    NotebookRun run = run("# A", "1", "2");
    Set<String> ids = new HashSet<>();
    cells(run).forEach(cell -> ids.add(cell.getAsJsonObject().get("id").getAsString()));
    assertEquals(3, ids.size());
    assertTrue(Files.readString(run.notebook()).contains("\"nbformat_minor\": 5"));
  }

  @Test
  void a_value_shown_under_an_id_shows_as_the_latest_of_that_id() throws IOException {
    String cells = "rungwork.kernel.EvaluatorTest.Hook.target()";
    NotebookRun run =
        run(cells + ".display(720, \"mass\");", cells + ".update(710, \"mass\");", "1 + 1");
    assertTrue(run.complete(), run::remark);
    JsonObject shown = output(run, 0, 0);
    assertEquals("display_data", shown.get("output_type").getAsString());
    assertEquals("[\"710\"]", shown.getAsJsonObject("data").get("text/plain").toString());
    assertEquals(0, cells(run).get(1).getAsJsonObject().getAsJsonArray("outputs").size());
  }

  @Test
  void a_failed_cell_ends_the_run_and_both_files_say_why() throws IOException {
    NotebookRun run = run("int a = 1;", "a / 0", "System.out.println(\"never\");");
    assertFalse(run.complete());
    assertEquals("cell [2] failed: ArithmeticException: / by zero", run.remark());
    assertEquals("error", output(run, 1, 0).get("output_type").getAsString());
    assertEquals(0, cells(run).get(2).getAsJsonObject().getAsJsonArray("outputs").size());
    assertTrue(Files.readString(run.page()).contains("ArithmeticException: / by zero"));
  }

  @Test
  void a_cell_over_its_limit_ends_the_run() throws IOException {
    NotebookRun run = run("while (true) { Math.random(); }");
    assertFalse(run.complete());
    assertTrue(run.remark().startsWith("cell [1] failed: Interrupted"), run::remark);
    assertTrue(Files.readString(run.page()).contains("longer than its limit of 2 s"));
  }

  @Test
  void a_cell_that_ends_the_program_fails_the_run() throws IOException {
    NotebookRun run = run("System.exit(0);");
    assertEquals(
        "cell [1] failed: ExitRefused: a cell cannot end the program; remove the call",
        run.remark());
  }

  @Test
  void the_page_needs_no_script_and_no_network_and_escapes_what_is_no_markup() throws IOException {
    NotebookRun run =
        run(
            "# Size <3>\n\n| a | b |\n|---|---|\n| 1 | **2** |\n\n<script>alert(1)</script>\n"
                + "[link](https://example.org) [bad](javascript:alert(1))"
                + " ![far](https://example.org/a.png)",
            "System.out.println(\"<script>\\u001b[31mred\\u001b[0m & \\u0007\");");
    String page = Files.readString(run.page());
    assertTrue(page.contains("<title>Size &lt;3&gt;</title>"), page);
    assertTrue(page.contains("default-src 'none'"));
    assertTrue(page.contains("<td><strong>2</strong></td>"));
    assertTrue(page.contains("&lt;script&gt;<span class=\"ansi-red\">red</span> &amp; \uFFFD"));
    assertFalse(page.contains("<script"));
    assertFalse(page.contains("javascript:"));
    assertFalse(page.contains("<img"));
    assertTrue(page.contains("href=\"https://example.org\""));
    assertTrue(page.contains(".own { color: #123456 }"));
    assertTrue(page.contains("<footer>the <i>footer</i></footer>"));
  }

  @Test
  void the_page_shows_the_richest_form() throws IOException {
    NotebookRun run = run("java.time.Duration.ZERO", "java.nio.file.Path.of(\"x\")", "\"<p>\"");
    String page = Files.readString(run.page());
    assertTrue(page.contains("<div class=\"output\"><svg>d</svg></div>"), page);
    assertTrue(page.contains("<div class=\"output\"><b>path</b></div>"));
    assertTrue(page.contains("<pre class=\"plain\">&lt;p&gt;</pre>"));
    assertFalse(page.contains("a duration"));
  }

  @Test
  void pictures_beside_the_notebook_are_held_in_the_page() throws IOException {
    Files.write(folder.resolve("dot.png"), new byte[] {1, 2, 3});
    String page = Files.readString(run("# P\n\n![a dot](dot.png)").page());
    assertTrue(page.contains("<img src=\"data:image/png;base64,AQID\" alt=\"a dot\""), page);
  }

  @Test
  void a_file_that_is_no_notebook_is_refused_by_name() throws IOException {
    Path noJson = Files.writeString(folder.resolve("a.ipynb"), "hello {");
    Path old = Files.writeString(folder.resolve("b.ipynb"), NOTEBOOK.formatted("3", ""));
    Path binary = Files.write(folder.resolve("c.ipynb"), new byte[] {(byte) 0xFF, 0, 1});
    assertEquals(noJson + " is no notebook: it does not hold JSON", refusal(noJson));
    assertEquals(
        old + " has notebook format 3; format 4 with a list of cells is needed", refusal(old));
    assertEquals(binary + " is no notebook: it does not hold JSON", refusal(binary));
  }

  private String refusal(Path file) {
    return assertThrows(IllegalArgumentException.class, () -> runFile(file)).getMessage();
  }
}
