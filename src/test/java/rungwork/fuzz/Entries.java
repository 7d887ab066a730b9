package rungwork.fuzz;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The public entries of a room, found in its compiled classes. */
final class Entries {
  private static final Path CLASSES = Path.of("target", "classes");

  /** What every object has, or every enum. */
  private static final Set<String> NOT_OURS = Set.of("equals", "hashCode", "valueOf", "values");

  private Entries() {}

  /** The rooms that have classes, in alphabetical order. */
  static List<String> rooms() {
    try (Stream<Path> folders = Files.list(CLASSES.resolve("rungwork"))) {
      return folders
          .filter(Files::isDirectory)
          .map(folder -> folder.getFileName().toString())
          .filter(room -> !types(room).isEmpty())
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** In an order that does not change from run to run. */
  static List<Entry> of(String room) {
    return types(room).stream()
        .flatMap(Entries::entries)
        .sorted(Comparator.comparing((Entry entry) -> entry.code().toGenericString()))
        .toList();
  }

  static List<Class<?>> types(String room) {
    List<Class<?>> types = new ArrayList<>();
    try (Stream<Path> files = Files.list(CLASSES.resolve(Path.of("rungwork", room)))) {
      for (Path file : files.filter(Entries::isClass).sorted().toList()) {
        Class<?> type = Class.forName(name(file), false, Entries.class.getClassLoader());
        if (isPublic(type)) {
          types.add(type);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (ClassNotFoundException e) {
      throw new AssertionError(e);
    }
    return types;
  }

  private static boolean isClass(Path file) {
    return file.toString().endsWith(".class") && !file.endsWith("package-info.class");
  }

  private static String name(Path file) {
    String path = CLASSES.relativize(file).toString();
    return path.substring(0, path.length() - ".class".length())
        .replace(java.io.File.separator, ".");
  }

  private static boolean isPublic(Class<?> type) {
    boolean shown = !type.isAnonymousClass() && !type.isSynthetic();
    for (Class<?> at = type; at != null; at = at.getEnclosingClass()) {
      shown = shown && Modifier.isPublic(at.getModifiers());
    }
    return shown;
  }

  private static Stream<Entry> entries(Class<?> type) {
    Stream<Entry> makers = Arrays.stream(type.getConstructors()).map(Entry::new);
    Stream<Entry> methods =
        Arrays.stream(type.getDeclaredMethods()).filter(Entries::isEntry).map(Entry::new);
    return type.isAnnotation() ? Stream.of() : Stream.concat(makers, methods);
  }

  private static boolean isEntry(Method method) {
    return Modifier.isPublic(method.getModifiers())
        && !method.isSynthetic()
        && !method.isBridge()
        && !NOT_OURS.contains(method.getName())
        && !isComponent(method);
  }

  /** A record's components are read by {@link Inspection}. */
  private static boolean isComponent(Method method) {
    Class<?> type = method.getDeclaringClass();
    return type.isRecord()
        && method.getParameterCount() == 0
        && Arrays.stream(type.getRecordComponents()).anyMatch(c -> method.equals(c.getAccessor()));
  }
}
