package rungwork.kernel;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;

/**
 * The source files that travel on the class path below {@link #FOLDER}, found by the simple name of
 * their type.
 */
final class SourceIndex {
  /** Not a package that code could name, so that completion never offers it. */
  static final String FOLDER = "META-INF/sources/";

  private static final String ENDING = ".java";

  private final ClassLoader loader;
  private Optional<Map<String, List<String>>> files = Optional.empty();

  /** The sources that a class loader reaches; they are looked for when the first is asked for. */
  SourceIndex(ClassLoader loader) {
    this.loader = loader;
  }

  private Map<String, List<String>> found() {
    Map<String, List<String>> found = new HashMap<>();
    for (Path entry : ClassPath.of(loader)) {
      try {
        names(entry)
            .forEach(name -> found.computeIfAbsent(type(name), any -> new ArrayList<>()).add(name));
      } catch (IOException unreadable) {
        continue; // what cannot be read is not documented
      }
    }
    return found;
  }

  private static List<String> names(Path entry) throws IOException {
    if (Files.isRegularFile(entry)) {
      try (JarFile jar = new JarFile(entry.toFile())) {
        return jar.stream().map(ZipEntry::getName).filter(SourceIndex::isSource).toList();
      }
    }
    Path sources = entry.resolve(FOLDER);
    if (!Files.isDirectory(sources)) {
      return List.of();
    }
    try (Stream<Path> found = Files.walk(sources)) {
      return found
          .map(file -> entry.relativize(file).toString().replace('\\', '/'))
          .filter(SourceIndex::isSource)
          .toList();
    }
  }

  private static boolean isSource(String name) {
    return name.startsWith(FOLDER) && name.endsWith(ENDING);
  }

  private static String type(String file) {
    return file.substring(file.lastIndexOf('/') + 1, file.length() - ENDING.length());
  }

  /** The texts of the files whose type has the simple name. */
  List<String> texts(String simpleName) {
    return files(simpleName).stream().map(this::text).toList();
  }

  /** The full names of the public types that have the simple name. */
  List<String> publicTypes(String simpleName) {
    Pattern open = Pattern.compile("(?m)^public .*\\b" + Pattern.quote(simpleName) + "\\b");
    return files(simpleName).stream()
        .filter(file -> open.matcher(text(file)).find())
        .map(file -> file.substring(FOLDER.length(), file.length() - ENDING.length()))
        .map(name -> name.replace('/', '.'))
        .sorted()
        .toList();
  }

  private synchronized List<String> files(String simpleName) {
    Map<String, List<String>> all = files.orElseGet(this::found);
    files = Optional.of(all);
    return all.getOrDefault(simpleName, List.of());
  }

  private String text(String name) {
    try (InputStream in = loader.getResourceAsStream(name)) {
      return in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      return "";
    }
  }
}
