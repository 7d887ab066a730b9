package rungwork.notebook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A Java on this machine that can run the kernel.
 *
 * @param home its folder
 * @param feature its feature release, such as 25
 */
record Jdk(Path home, int feature) {
  private static final String VARIABLE = "JAVA_HOME";

  /** One of each newer release that {@code JAVA_HOME…} names or that lies in the usual places. */
  static List<Jdk> newer() throws IOException {
    Map<Integer, Jdk> found = new TreeMap<>();
    for (Path home : homes()) {
      Path file = home.resolve("release");
      if (!Files.isRegularFile(file) || !Files.isExecutable(home.resolve("bin/java"))) {
        continue;
      }
      Properties release = new Properties();
      try (InputStream in = Files.newInputStream(file)) {
        release.load(in);
      }
      int feature = number(release.getProperty("JAVA_VERSION", ""));
      if (feature > Runtime.version().feature()
          && release.getProperty("MODULES", "").contains("jdk.jshell")) {
        found.putIfAbsent(feature, new Jdk(home, feature));
      }
    }
    return List.copyOf(found.values());
  }

  private static List<Path> homes() throws IOException {
    List<Path> homes = new ArrayList<>();
    System.getenv().entrySet().stream()
        .filter(variable -> variable.getKey().startsWith(VARIABLE))
        .filter(variable -> !variable.getValue().isBlank())
        .forEach(variable -> homes.add(Path.of(variable.getValue())));
    Path user = Path.of(System.getProperty("user.home"));
    for (Path place :
        List.of(
            Path.of("/usr/lib/jvm"),
            Path.of("/opt"),
            Path.of("/Library/Java/JavaVirtualMachines"),
            user.resolve(".jdks"),
            user.resolve(".sdkman/candidates/java"))) {
      if (Files.isDirectory(place)) {
        try (Stream<Path> each = Files.list(place)) {
          each.sorted().forEach(home -> homes.addAll(List.of(home, home.resolve("Contents/Home"))));
        }
      }
    }
    return homes;
  }

  /** Of a version such as "25.0.3", quoted; older Javas begin with 1 and do not matter here. */
  private static int number(String version) {
    String first = version.replace("\"", "").replaceFirst("[^0-9].*", "");
    return first.isEmpty() ? 0 : Integer.parseInt(first);
  }

  /** What starts it. */
  String java() {
    return home.resolve("bin").resolve("java").toString();
  }

  @Override
  public String toString() {
    return "Java " + feature;
  }
}
