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
    Path notebook = folder.resolve("ends.ipynb");
    Files.writeString(
        notebook,
        """
        {"nbformat": 4, "nbformat_minor": 5, "metadata": {}, "cells": [{"cell_type": "code",
         "id": "a", "metadata": {}, "execution_count": null, "outputs": [], "source": "%s"}]}
        """
            .formatted(cell.replace("\"", "\\\"")));
    return External.run(
        Map.of(),
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
