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
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class InstallationTest {
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @TempDir Path folder;

  private int run(String... arguments) {
    return runWhere(Map.of("HOME", folder.toString()), arguments);
  }

  private int runWhere(Map<String, String> environment, String... arguments) {
    return new Commands(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            new Surroundings(environment, "Linux", line -> {}))
        .run(arguments);
  }

  private String said() {
    String said = out.toString(StandardCharsets.UTF_8);
    out.reset();
    return said;
  }

  private String firstComplaint() {
    String said = err.toString(StandardCharsets.UTF_8);
    err.reset();
    return said.lines().findFirst().orElse("");
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

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void install_user_writes_a_kernel_that_needs_nothing_of_this_folder_over_an_older_copy()
      throws IOException {
    Path kernel = folder.resolve("data/jupyter/kernels/rungwork");
    Files.createDirectories(kernel.resolve("lib-1"));
    Files.writeString(kernel.resolve("lib-1/00-old.jar"), "old");
    Files.writeString(kernel.resolve("kernel.json"), "{\"argv\": [\"rungwork.notebook.Main\"]}");
    Path launcher = Files.createFile(folder.resolve("jupyter"));
    assertTrue(launcher.toFile().setExecutable(true));
    Map<String, String> here =
        Map.of("Path", folder.toString(), "XDG_DATA_HOME", folder.resolve("data").toString());
    assertEquals(0, runWhere(here, "install", "--user"));
    assertEquals("kernel rungwork is in " + kernel + "\n", said());
    assertEquals(
        List.of("kernel.json", "lib-2", "logo-32x32.png", "logo-64x64.png", "logo-svg.svg"),
        names(kernel));
    List<String> words = words(kernel);
    assertTrue(Files.isExecutable(Path.of(words.get(0))));
    for (String jar : words.get(words.indexOf("-cp") + 1).split(File.pathSeparator)) {
      assertTrue(jar.startsWith(kernel.toString()), jar);
      assertTrue(Files.isRegularFile(Path.of(jar)), jar);
    }
    assertEquals("{connection_file}", words.get(words.size() - 1));
    assertTrue(words.contains("-XX:SharedArchiveFile=" + kernel.resolve("lib-2/classes.jsa")));
    assertTrue(Files.isRegularFile(kernel.resolve("lib-2/classes.jsa")));
    assertEquals("message", spec(kernel).get("interrupt_mode").getAsString());
    assertEquals("Rungwork (Java)", spec(kernel).get("display_name").getAsString());
    logosAreDrawn(kernel);
    assertEquals(0, runWhere(here, "uninstall"));
    assertEquals("kernel rungwork is gone from " + kernel + "\n", said());
    assertFalse(Files.exists(kernel));
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
    assertEquals(0, run("install", "--prefix=" + prefix, "--name", "trial"));
    assertEquals(
        "kernel trial is in "
            + kernel("trial")
            + "\n  A Jupyter that is not installed under this prefix finds it by JUPYTER_PATH="
            + folder.resolve("share/jupyter")
            + "\n"
            + "  Jupyter is not on this machine's PATH; once it is installed it finds the kernel.\n"
            + "  Get it by \"pip install notebook\", on Debian and its like by \"apt install"
            + " jupyter-notebook\".\n"
            + "  Without Jupyter a notebook runs by: run FILE.ipynb --out DIR\n",
        said());
    assertEquals("Rungwork (Java), trial", spec(kernel("trial")).get("display_name").getAsString());
    assertEquals(0, run("uninstall", "--prefix", prefix, "--name", "trial"));
    assertEquals("kernel trial is gone from " + kernel("trial") + "\n", said());
    assertFalse(Files.exists(kernel("trial")));
    assertTrue(Files.exists(kernel("rungwork")));
    assertEquals(0, run("uninstall", "--prefix", prefix, "--name", "trial"));
    assertEquals("there was no kernel trial in " + kernel("trial").getParent() + "\n", said());
  }

  @Test
  void the_users_own_folder_is_meant_where_none_is_named() {
    Path kernels = folder.resolve(".local/share/jupyter/kernels");
    for (String[] words : new String[][] {{"uninstall"}, {"uninstall", "--user"}}) {
      assertEquals(0, run(words));
      assertEquals("there was no kernel rungwork in " + kernels + "\n", said());
    }
  }

  @Test
  void a_strangers_kernel_is_neither_replaced_nor_taken_away() throws IOException {
    Path stranger = Files.createDirectories(kernel("other"));
    Files.writeString(stranger.resolve("kernel.json"), "{\"argv\": [\"other\"]}");
    Path unknown = Files.createDirectories(kernel("unknown"));
    Files.writeString(unknown.resolve("notes.txt"), "mine");
    Path file = Files.writeString(kernel("file"), "mine");
    for (Path each : List.of(stranger, unknown, file)) {
      String name = each.getFileName().toString();
      for (String command : List.of("install", "uninstall")) {
        assertEquals(1, run(command, "--prefix", folder.toString(), "--name", name));
        assertEquals(
            each + " holds something else than this kernel; it is left as it is", firstComplaint());
      }
    }
    assertTrue(Files.exists(stranger.resolve("kernel.json")));
    assertTrue(Files.exists(unknown.resolve("notes.txt")));
    assertTrue(Files.exists(file));
  }

  @Test
  void what_an_installation_left_that_was_ended_half_way_is_taken_away() throws IOException {
    Files.createDirectories(kernel("rungwork").resolve("lib-1"));
    assertEquals(0, run("uninstall", "--prefix", folder.toString()));
    assertEquals("kernel rungwork is gone from " + kernel("rungwork") + "\n", said());
  }

  @Test
  void a_name_that_jupyter_does_not_take_is_refused() {
    for (String name : List.of("my kernel", "..", ".hidden", "a/b")) {
      assertEquals(1, run("install", "--prefix", folder.toString(), "--name", name));
      assertEquals(
          "a kernel cannot be named \""
              + name
              + "\"; use letters, digits, '.', '_' and '-' only, a letter or digit first",
          firstComplaint());
    }
  }

  @Test
  void words_that_cannot_be_understood_are_named() {
    String prefix = folder.toString();
    assertEquals(2, run("install", "--user", "--prefix", prefix));
    assertEquals("give --user or --prefix, not both", firstComplaint());
    assertEquals(2, run("install", "--prefix"));
    assertEquals("--prefix needs a value after it", firstComplaint());
    assertEquals(2, run("install", "--prefix", "--name", "trial"));
    assertEquals("--prefix needs a value after it", firstComplaint());
    assertEquals(2, run("install", "--name="));
    assertEquals("--name needs a value after it", firstComplaint());
    assertEquals(2, run("install", "--sys-prefix"));
    assertEquals("cannot use --sys-prefix", firstComplaint());
    assertEquals(2, run("uninstall", "trial"));
    assertEquals("cannot use trial", firstComplaint());
  }

  @Test
  void a_place_that_cannot_hold_a_kernel_is_named() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "");
    assertEquals(2, run("install", "--prefix", file.toString()));
    assertEquals("--prefix " + file + " is a file; name a folder", firstComplaint());
    assertEquals("/x: no permission", FileFault.words(new AccessDeniedException("/x")));
    assertEquals("/x is not there", FileFault.words(new NoSuchFileException("/x")));
    assertEquals(
        "/x is there already and is no folder",
        FileFault.words(new FileAlreadyExistsException("/x")));
    assertEquals(
        "/x: No space left on device",
        FileFault.words(new FileSystemException("/x", null, "No space left on device")));
  }
}
