package rungwork.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The classes of this build as a kernel on every newer Java that the machine has. */
class NewerJavaTest {
  @TempDir Path folder;

  @Test
  void the_kernel_survives_its_faults_on_newer_javas_too() throws IOException {
    List<Jdk> all = Jdk.newer();
    if (all.isEmpty()) {
      abort("skipped: there is no newer Java on this machine to try the kernel on");
    }
    External.need(
        "Jupyter (jupyter_client)", External.PYTHON, "-c", "import jupyter_client.manager");
    for (Jdk jdk : all) {
      survives(jdk);
    }
  }

  private void survives(Jdk jdk) throws IOException {
    Path prefix = folder.resolve(jdk.toString());
    External.Result installed = run(jdk, "install", "--prefix", prefix.toString());
    assertEquals(0, installed.status(), () -> jdk + "\n" + installed.output());
    External.Result result =
        External.run(
            Map.of(
                "JUPYTER_PATH", prefix.resolve("share/jupyter").toString(),
                "JUPYTER_RUNTIME_DIR", prefix.resolve("runtime").toString(),
                "PYTHONDONTWRITEBYTECODE", "1"),
            600,
            External.PYTHON,
            "src/test/resources/rungwork/notebook/faults.py",
            "Faults",
            "Ends",
            "FullMemory");
    assertEquals(0, result.status(), () -> jdk + "\n" + result.output());
    assertTrue(result.output().endsWith("\nOK\n"), () -> jdk + "\n" + result.output());
  }

  private static External.Result run(Jdk jdk, String... words) throws IOException {
    Stream<String> program =
        Stream.of(jdk.java(), "-cp", System.getProperty("java.class.path"), Main.class.getName());
    return External.run(
        Map.of(), 120, Stream.concat(program, Stream.of(words)).toArray(String[]::new));
  }

  @Test
  void notebooks_come_out_alike_on_newer_javas() throws IOException {
    Path notebook = Path.of("src/test/resources/rungwork/kernel/small.ipynb");
    for (Jdk jdk : Jdk.newer()) {
      External.Result result =
          run(jdk, "run", notebook.toString(), "--out", folder.resolve("out").toString());
      assertEquals(0, result.status(), () -> jdk + "\n" + result.output());
      assertEquals(
          RealJupyterTest.texts(Ran.notebook(notebook).executed()),
          RealJupyterTest.texts(folder.resolve("out").resolve("small.ipynb")));
    }
  }
}
