package rungwork.kernel;

import java.io.File;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The jars and class folders that a class loader reads from: its own URLs where it has them (as
 * under a build tool that starts the program inside its own process), else the process's class
 * path.
 */
final class ClassPath {
  private ClassPath() {}

  static List<Path> of(ClassLoader loader) {
    Set<Path> entries = new LinkedHashSet<>();
    if (loader instanceof URLClassLoader withUrls) {
      for (URL url : withUrls.getURLs()) {
        entries.add(path(url));
      }
    } else {
      for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
        entries.add(Path.of(entry).toAbsolutePath());
      }
    }
    List<Path> present = new ArrayList<>(entries);
    present.removeIf(entry -> !Files.exists(entry));
    return present;
  }

  static String joined(List<Path> entries) {
    return entries.stream().map(Path::toString).collect(Collectors.joining(File.pathSeparator));
  }

  private static Path path(URL url) {
    try {
      return Path.of(url.toURI());
    } catch (URISyntaxException e) {
      throw new IllegalArgumentException("the class path entry " + url + " is no file", e);
    }
  }
}
