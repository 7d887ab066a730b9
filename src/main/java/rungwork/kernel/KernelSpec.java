package rungwork.kernel;

import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;

/**
 * A kernel as Jupyter finds it: a folder with a {@code kernel.json} and a copy of every jar, so
 * that neither a clean build nor a moved project breaks it.
 *
 * @param name of the folder, by which notebooks ask for the kernel
 * @param displayName what people see
 * @param main the class that is started with the word {@code kernel} and the connection file, or
 *     with {@code rehearse}; logos lie beside it
 */
public record KernelSpec(String name, String displayName, Class<?> main) {
  private static final String FILE = "kernel.json";
  private static final String JAVA =
      Path.of(System.getProperty("java.home"), "bin", "java").toString();
  private static final List<String> LOGOS =
      List.of("logo-32x32.png", "logo-64x64.png", "logo-svg.svg");

  /** What Jupyter takes for a name. */
  private static final String NAME = "[A-Za-z0-9._-]+";

  /**
   * What an installation came to.
   *
   * @param folder the kernel's folder
   * @param archived whether an archive of its classes was made, without which it starts more slowly
   */
  public record Installed(Path folder, boolean archived) {}

  /** Refuses a name that Jupyter would not take. */
  public KernelSpec {
    if (!name.matches(NAME)) {
      throw new IllegalArgumentException(
          "a kernel cannot be named \"" + name + "\"; use letters, digits, '.', '_' and '-' only");
    }
  }

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
   */
  public Installed install(Path kernels) throws IOException {
    Path target = folder(kernels);
    refuseStranger(target);
    Path fresh = target.resolveSibling(name + ".new");
    delete(fresh);
    Files.createDirectories(fresh.resolve("lib"));
    List<String> jars = copyClasses(fresh.resolve("lib"));
    copyLogos(fresh);
    List<String> program = program(target.resolve("lib"), jars);
    Files.writeString(fresh.resolve(FILE), json(List.of(), program));
    delete(target);
    Files.move(fresh, target);
    List<String> archive = ClassArchive.make(JAVA, rehearsing(program), target);
    Files.writeString(target.resolve(FILE), json(archive, program));
    return new Installed(target, !archive.isEmpty());
  }

  /**
   * Takes the kernel away.
   *
   * @return its folder; none if it was not there
   */
  public Optional<Path> uninstall(Path kernels) throws IOException {
    Path target = folder(kernels);
    if (Files.notExists(target)) {
      return Optional.empty();
    }
    refuseStranger(target);
    delete(target);
    return Optional.of(target);
  }

  private Path folder(Path kernels) {
    return kernels.toAbsolutePath().normalize().resolve(name);
  }

  /** A folder of that name may belong to another kernel, which is left alone. */
  private void refuseStranger(Path target) throws IOException {
    Path file = target.resolve(FILE);
    boolean ours = Files.isRegularFile(file) && Files.readString(file).contains(main.getName());
    if (Files.exists(target) && !ours) {
      throw new IllegalArgumentException(
          target + " holds something else than this kernel; it is left as it is");
    }
  }

  private void copyLogos(Path folder) throws IOException {
    for (String logo : LOGOS) {
      try (InputStream drawing = main.getResourceAsStream(logo)) {
        if (drawing != null) {
          Files.copy(drawing, folder.resolve(logo));
        }
      }
    }
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

  private List<String> program(Path library, List<String> jars) {
    return List.of(
        "-cp", ClassPath.joined(jars.stream().map(library::resolve).toList()), main.getName());
  }

  private static List<String> rehearsing(List<String> program) {
    return Stream.concat(program.stream(), Stream.of("rehearse")).toList();
  }

  private String json(List<String> options, List<String> program) {
    JsonArray command = new JsonArray();
    command.add(JAVA);
    options.forEach(command::add);
    program.forEach(command::add);
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
