package rungwork.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CommandsTest {
  private static final Path SMALL = Path.of("src/test/resources/rungwork/kernel/small.ipynb");

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @TempDir Path folder;

  private final List<String> live = new ArrayList<>();

  private int run(String... arguments) {
    return runWhere("", arguments);
  }

  private int runWhere(String path, String... arguments) {
    return new Commands(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            new Surroundings(path, live::add))
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

  private Path kernel(String name) {
    return folder.resolve("share/jupyter/kernels").resolve(name);
  }

  private static JsonObject spec(Path kernel) throws IOException {
    return JsonParser.parseString(Files.readString(kernel.resolve("kernel.json")))
        .getAsJsonObject();
  }

  private static List<String> words(Path kernel) throws IOException {
    List<String> words = new ArrayList<>();
    spec(kernel).getAsJsonArray("argv").forEach(word -> words.add(word.getAsString()));
    return words;
  }

  @Test
  void install_writes_a_kernel_that_needs_nothing_of_this_folder_over_an_older_copy()
      throws IOException {
    Path kernel = kernel("rungwork");
    Files.createDirectories(kernel.resolve("lib"));
    Files.writeString(kernel.resolve("lib/00-old.jar"), "old");
    Files.writeString(kernel.resolve("kernel.json"), "{\"argv\": [\"rungwork.notebook.Main\"]}");
    Path launcher = Files.createFile(folder.resolve("jupyter"));
    assertTrue(launcher.toFile().setExecutable(true));
    assertEquals(0, runWhere(folder.toString(), "install", "--prefix", folder.toString()));
    assertEquals("kernel rungwork is in " + kernel + "\n", said());
    assertFalse(Files.exists(kernel.resolve("lib/00-old.jar")));
    List<String> words = words(kernel);
    assertTrue(Files.isExecutable(Path.of(words.get(0))));
    for (String jar : words.get(words.indexOf("-cp") + 1).split(File.pathSeparator)) {
      assertTrue(jar.startsWith(kernel.toString()), jar);
      assertTrue(Files.isRegularFile(Path.of(jar)), jar);
    }
    assertEquals("{connection_file}", words.get(words.size() - 1));
    assertTrue(words.contains("-XX:SharedArchiveFile=" + kernel.resolve("classes.jsa")));
    assertTrue(Files.isRegularFile(kernel.resolve("classes.jsa")));
    assertEquals("message", spec(kernel).get("interrupt_mode").getAsString());
    assertEquals("Rungwork (Java)", spec(kernel).get("display_name").getAsString());
    logosAreDrawn(kernel);
  }

  private static void logosAreDrawn(Path kernel) throws IOException {
    for (int size : new int[] {32, 64}) {
      BufferedImage logo =
          ImageIO.read(kernel.resolve("logo-%dx%d.png".formatted(size, size)).toFile());
      assertEquals(size, logo.getWidth());
      assertEquals(size, logo.getHeight());
      assertEquals(0xFF1A1A1A, logo.getRGB(19 * size / 64, size / 2), "ink on the left rail");
      assertEquals(0xFFFFFFFF, logo.getRGB(size / 2, size / 2), "white between the rails");
      assertEquals(0, logo.getRGB(0, 0) >>> 24, "the corner lets a dark page through");
    }
    String drawing = Files.readString(kernel.resolve("logo-svg.svg"));
    assertTrue(drawing.contains("A ladder frame in plan"), drawing);
  }

  @Test
  void a_kernel_under_another_name_stands_beside_the_first_and_is_taken_away_alone()
      throws IOException {
    String prefix = folder.toString();
    Files.createDirectories(kernel("rungwork"));
    assertEquals(0, run("install", "--prefix", prefix, "--name", "trial"));
    assertEquals(
        "kernel trial is in "
            + kernel("trial")
            + "\n  Jupyter is not on this machine's PATH; once it is installed it finds the kernel.\n"
            + "  Without Jupyter a notebook runs by: run FILE.ipynb --out DIR\n",
        said());
    assertEquals("Rungwork (Java), trial", spec(kernel("trial")).get("display_name").getAsString());
    out.reset();
    assertEquals(0, run("uninstall", "--prefix", prefix, "--name", "trial"));
    assertEquals("kernel trial is gone from " + kernel("trial") + "\n", said());
    assertFalse(Files.exists(kernel("trial")));
    assertTrue(Files.exists(kernel("rungwork")));
    out.reset();
    assertEquals(0, run("uninstall", "--prefix", prefix, "--name", "trial"));
    assertEquals(
        "there was no kernel trial in " + folder.resolve("share/jupyter/kernels") + "\n", said());
  }

  @Test
  void a_strangers_kernel_is_neither_replaced_nor_taken_away() throws IOException {
    Path stranger = Files.createDirectories(kernel("other"));
    Files.writeString(stranger.resolve("kernel.json"), "{\"argv\": [\"other\"]}");
    String kept = stranger + " holds something else than this kernel; it is left as it is";
    for (String command : List.of("install", "uninstall")) {
      err.reset();
      assertEquals(1, run(command, "--prefix", folder.toString(), "--name", "other"));
      assertEquals(kept, firstComplaint());
    }
    assertTrue(Files.exists(stranger.resolve("kernel.json")));
  }

  @Test
  void what_cannot_be_installed_is_said() {
    assertEquals(1, run("install", "--prefix", folder.toString(), "--name", "my kernel"));
    assertEquals(
        "a kernel cannot be named \"my kernel\"; use letters, digits, '.', '_' and '-' only",
        firstComplaint());
    err.reset();
    assertEquals(2, run("install", "--user", "--prefix", folder.toString()));
    assertEquals("give --user or --prefix, not both", firstComplaint());
  }

  @Test
  void start_is_harmless_when_repeated_and_says_what_the_library_is_not() {
    String banner = Rungwork.start();
    assertEquals(banner, Rungwork.start());
    assertTrue(banner.contains("not an approval"));
  }
}
