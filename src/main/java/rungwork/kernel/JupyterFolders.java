package rungwork.kernel;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Where Jupyter keeps its data for one user.
 *
 * <p>Source: {@code jupyter_core.paths.jupyter_data_dir} of Project Jupyter, versions 4.12 and 5.
 * The folders of {@code JUPYTER_PLATFORM_DIRS} are from memory.
 *
 * @param environment variables of the process
 * @param system the operating system's name as Java has it
 */
record JupyterFolders(Map<String, String> environment, String system) {
  private static final Set<String> NO = Set.of("", "no", "n", "false", "off", "0", "0.0");

  /** The user's own data folder. */
  Path data() {
    return variable("JUPYTER_DATA_DIR").orElseGet(this::ofSystem);
  }

  private Path ofSystem() {
    if (system.startsWith("Mac")) {
      Path library = home().resolve("Library");
      return asPlatform()
          ? library.resolve("Application Support").resolve("Jupyter")
          : library.resolve("Jupyter");
    }
    return windows()
        ? ofWindows()
        : variable("XDG_DATA_HOME")
            .orElseGet(() -> home().resolve(".local").resolve("share"))
            .resolve("jupyter");
  }

  private Path ofWindows() {
    if (asPlatform()) {
      return variable("LOCALAPPDATA")
          .orElseGet(() -> home().resolve("AppData").resolve("Local"))
          .resolve("Jupyter");
    }
    return variable("APPDATA")
        .map(roaming -> roaming.resolve("jupyter"))
        .orElseGet(() -> configuration().resolve("data"));
  }

  private Path configuration() {
    return variable("JUPYTER_CONFIG_DIR").orElseGet(() -> home().resolve(".jupyter"));
  }

  private Path home() {
    return variable(windows() ? "USERPROFILE" : "HOME")
        .orElseGet(() -> Path.of(System.getProperty("user.home")));
  }

  private boolean windows() {
    return system.startsWith("Windows");
  }

  private boolean asPlatform() {
    String wish = environment.getOrDefault("JUPYTER_PLATFORM_DIRS", "");
    return !NO.contains(wish.toLowerCase(Locale.ROOT));
  }

  private Optional<Path> variable(String name) {
    return Optional.ofNullable(environment.get(name)).filter(set -> !set.isEmpty()).map(Path::of);
  }
}
