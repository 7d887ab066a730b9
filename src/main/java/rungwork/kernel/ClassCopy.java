package rungwork.kernel;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;

/**
 * Copies of the running program's jars in a kernel's folder, each copy in a folder of its own, so
 * that a new one never touches what a running kernel reads.
 */
final class ClassCopy {
  private static final String NAME = "lib-";

  private ClassCopy() {}

  /** An empty folder for a new copy. */
  static Path folder(Path kernel) throws IOException {
    int number = 1;
    while (Files.exists(kernel.resolve(NAME + number))) {
      number++;
    }
    return Files.createDirectories(kernel.resolve(NAME + number));
  }

  /** Whether a file in a kernel's folder is a copy of jars. */
  static boolean isOne(Path file) {
    return file.getFileName().toString().matches("lib|lib-\\d+") && Files.isDirectory(file);
  }

  /**
   * Copies the running program's jars, and its class folders as jars, in the class path's order.
   */
  static List<Path> into(Path library) throws IOException {
    List<Path> jars = new ArrayList<>();
    for (Path entry : ClassPath.of(ClassCopy.class.getClassLoader())) {
      Path jar = library.resolve("%02d-%s.jar".formatted(jars.size(), baseName(entry)));
      if (Files.isDirectory(entry)) {
        pack(entry, jar);
      } else {
        Files.copy(entry, jar);
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

  /** Takes away all copies but one; what a running kernel holds fast, as some systems do, stays. */
  static void keepOnly(Path library, Path kernel) throws IOException {
    for (Path old : in(kernel)) {
      if (!old.equals(library)) {
        deleteWhereFree(old);
      }
    }
  }

  private static List<Path> in(Path kernel) throws IOException {
    try (Stream<Path> files = Files.list(kernel)) {
      return files.filter(ClassCopy::isOne).toList();
    }
  }

  /** Takes a folder away as far as no running program holds it fast. */
  static void deleteWhereFree(Path folder) {
    try {
      delete(folder);
    } catch (IOException held) {
      // the next installation tries again
    }
  }

  /** Takes a folder away with all that is in it. */
  static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
