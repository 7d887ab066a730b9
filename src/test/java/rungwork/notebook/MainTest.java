package rungwork.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command line as a process of its own. */
class MainTest {
  private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");

  @TempDir Path folder;

  private External.Result runs(String cell) throws IOException {
    return runs(cell, Map.of());
  }

  private External.Result runs(String cell, Map<String, String> environment) throws IOException {
    Path notebook = folder.resolve("ends.ipynb");
    Files.writeString(
        notebook,
        """
        {"nbformat": 4, "nbformat_minor": 5, "metadata": {}, "cells": [{"cell_type": "code",
         "id": "a", "metadata": {}, "execution_count": null, "outputs": [], "source": "%s"}]}
        """
            .formatted(cell.replace("\"", "\\\"")));
    return External.run(
        environment,
        120,
        JAVA.toString(),
        "-cp",
        System.getProperty("java.class.path"),
        Main.class.getName(),
        "run",
        notebook.toString(),
        "--out",
        folder.resolve("out").toString());
  }

  @Test
  void a_run_that_a_library_ends_with_status_0_reports_1_and_says_why() throws IOException {
    External.Result result =
        runs(
            "new java.beans.Statement(Runtime.getRuntime(), \"exit\", new Object[]"
                + " {0}).execute();");
    assertEquals(new External.Result(1, "the run was ended before it finished\n"), result);
    assertFalse(Files.exists(folder.resolve("out/ends.html")));
  }

  @Test
  void the_machinery_of_tables_is_not_loaded_before_a_cell_asks_for_one() throws IOException {
    Map<String, String> talkative = Map.of("JDK_JAVA_OPTIONS", "-Xlog:class+load");
    External.Result without = runs("6 * 7", talkative);
    assertEquals(0, without.status(), without.output());
    assertTrue(without.output().contains("rungwork.kernel.Evaluator "));
    assertFalse(without.output().contains("tech.tablesaw.io."));
    assertFalse(without.output().contains("io.github.classgraph."));
    External.Result with = runs("tech.tablesaw.api.Table.create();", talkative);
    assertTrue(with.output().contains("tech.tablesaw.io."));
  }

  @Test
  void a_cell_that_halts_by_reflection_fails_and_leaves_its_page() throws IOException {
    External.Result result =
        runs("Runtime.class.getMethod(\"halt\", int.class).invoke(Runtime.getRuntime(), 0);");
    assertEquals(1, result.status());
    assertTrue(
        result
            .output()
            .startsWith(
                "ends.ipynb: cell [1] failed: ExitRefused: a cell cannot end the program; remove"
                    + " the call"),
        result.output());
    assertTrue(Files.exists(folder.resolve("out/ends.html")));
  }
}
