package rungwork.kernel;

import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;

/**
 * A kernel as Jupyter finds it: a folder with a {@code kernel.json} and a copy of every jar, so
 * that neither a clean build nor a moved project breaks it.
 *
 * @param name of the folder, by which notebooks ask for the kernel
 * @param displayName what people see
 * @param mainClass is started with the word {@code kernel} and the connection file
 */
public record KernelSpec(String name, String displayName, String mainClass) {
  /** Where Jupyter looks under a prefix such as a virtual environment. */
  public static Path folderUnder(Path prefix) {
    return prefix.resolve("share").resolve("jupyter").resolve("kernels");
  }

  /** Where Jupyter looks for kernels of this user alone. */
  public static Path userFolder() {
    String own = System.getenv().getOrDefault("JUPYTER_DATA_DIR", "");
    if (!own.isEmpty()) {
      return Path.of(own, "kernels");
    }
    Path home = Path.of(System.getProperty("user.home"));
    String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
    if (system.contains("windows")) {
      return Path.of(System.getenv("APPDATA"), "jupyter", "kernels");
    }
    return system.contains("mac")
        ? home.resolve(Path.of("Library", "Jupyter", "kernels"))
        : home.resolve(Path.of(".local", "share", "jupyter", "kernels"));
  }

  /**
   * Installs the running program's classes as a kernel; an older copy is replaced.
   *
   * @param kernels the folder that holds a folder for each kernel
   * @return the kernel's folder
   */
  public Path install(Path kernels) throws IOException {
    Path target = kernels.toAbsolutePath().normalize().resolve(name);
    Path fresh = target.resolveSibling(name + ".new");
    delete(fresh);
    Files.createDirectories(fresh.resolve("lib"));
    List<String> jars = copyClasses(fresh.resolve("lib"));
    Files.writeString(fresh.resolve("kernel.json"), json(target.resolve("lib"), jars));
    delete(target);
    Files.move(fresh, target);
    return target;
  }

  private static List<String> copyClasses(Path library) throws IOException {
    List<String> jars = new ArrayList<>();
    for (Path entry : ClassPath.of(KernelSpec.class.getClassLoader())) {
      String jar = "%02d-%s.jar".formatted(jars.size(), baseName(entry));
      if (Files.isDirectory(entry)) {
        pack(entry, library.resolve(jar));
      } else {
        Files.copy(entry, library.resolve(jar), StandardCopyOption.REPLACE_EXISTING);
      }
      jars.add(jar);
    }
    return jars;
  }

  private static String baseName(Path entry) {
    return entry.getFileName().toString().replaceFirst("\\.jar$", "");
  }

  private static void pack(Path folder, Path jar) throws IOException {
    try (OutputStream out = Files.newOutputStream(jar);
        JarOutputStream packed = new JarOutputStream(out);
        Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        String name = folder.relativize(file).toString().replace(File.separatorChar, '/');
        packed.putNextEntry(new JarEntry(name));
        Files.copy(file, packed);
        packed.closeEntry();
      }
    }
  }

  private String json(Path library, List<String> jars) {
    JsonArray command = new JsonArray();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-cp");
    command.add(ClassPath.joined(jars.stream().map(library::resolve).toList()));
    command.add(mainClass);
    command.add("kernel");
    command.add("{connection_file}");
    JsonObject json = new JsonObject();
    json.add("argv", command);
    json.addProperty("display_name", displayName);
    json.addProperty("language", "java");
    json.addProperty("interrupt_mode", "message");
    return new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create().toJson(json) + "\n";
  }

  private static void delete(Path folder) throws IOException {
    if (Files.notExists(folder)) {
      return;
    }
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
