package rungwork.kernel;

import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
  private static final String NAME = "[A-Za-z0-9][A-Za-z0-9._-]*";

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
          "a kernel cannot be named \""
              + name
              + "\"; use letters, digits, '.', '_' and '-' only, a letter or digit first");
    }
  }

  /** Where Jupyter looks under a prefix such as a virtual environment. */
  public static Path folderUnder(Path prefix) {
    return prefix.resolve("share").resolve("jupyter").resolve("kernels");
  }

  /**
   * Where Jupyter looks for kernels of this user alone.
   *
   * @param environment variables of the process
   * @param system the operating system's name as Java has it
   */
  public static Path userFolder(Map<String, String> environment, String system) {
    return new JupyterFolders(environment, system).data().resolve("kernels");
  }

  /**
   * Installs the running program's classes as a kernel. An older copy is replaced at one stroke
   * when the new one stands beside it, ready; kernels that run meanwhile keep the classes that they
   * have loaded.
   *
   * @param kernels the folder that holds a folder for each kernel
   */
  public Installed install(Path kernels) throws IOException {
    Path target = folder(kernels);
    refuseStranger(target);
    Path library = ClassCopy.folder(target);
    try {
      boolean archived = install(library, target);
      ClassCopy.keepOnly(library, target);
      return new Installed(target, archived);
    } catch (IOException unfinished) {
      ClassCopy.deleteWhereFree(library);
      throw unfinished;
    }
  }

  private boolean install(Path library, Path target) throws IOException {
    List<String> program = program(ClassCopy.into(library));
    List<String> archive = ClassArchive.make(JAVA, rehearsing(program), library);
    copyLogos(target);
    Path fresh = library.resolve(FILE);
    Files.writeString(fresh, json(archive, program));
    Files.move(fresh, target.resolve(FILE), StandardCopyOption.REPLACE_EXISTING);
    return !archive.isEmpty();
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
    ClassCopy.delete(target);
    return Optional.of(target);
  }

  private Path folder(Path kernels) {
    return kernels.toAbsolutePath().normalize().resolve(name);
  }

  /** A folder of that name may belong to another kernel, which is left alone. */
  private void refuseStranger(Path target) throws IOException {
    if (Files.exists(target) && !ours(target)) {
      throw new IllegalArgumentException(
          target + " holds something else than this kernel; it is left as it is");
    }
  }

  /** Ours by its word, or what an installation left that was ended half-way. */
  private boolean ours(Path target) throws IOException {
    Path file = target.resolve(FILE);
    if (Files.isRegularFile(file)) {
      return Files.readString(file).contains(main.getName());
    }
    if (!Files.isDirectory(target)) {
      return false;
    }
    try (Stream<Path> held = Files.list(target)) {
      return held.allMatch(each -> ClassCopy.isOne(each) || LOGOS.contains(name(each)));
    }
  }

  private static String name(Path file) {
    return file.getFileName().toString();
  }

  private void copyLogos(Path folder) throws IOException {
    for (String logo : LOGOS) {
      try (InputStream drawing = main.getResourceAsStream(logo)) {
        if (drawing != null) {
          Files.copy(drawing, folder.resolve(logo), StandardCopyOption.REPLACE_EXISTING);
        }
      }
    }
  }

  private List<String> program(List<Path> jars) {
    return List.of("-cp", ClassPath.joined(jars), main.getName());
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
}
