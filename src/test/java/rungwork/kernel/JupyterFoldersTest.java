package rungwork.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class JupyterFoldersTest {
  private static final String LINUX = "Linux";
  private static final String MAC = "Mac OS X";
  private static final String WINDOWS = "Windows 11";

  private static void kernelsAre(String folder, String system, Map<String, String> environment) {
    assertEquals(Path.of(folder, "kernels"), KernelSpec.userFolder(environment, system));
  }

  @Test
  void a_folder_that_is_named_for_jupyter_counts_everywhere() {
    for (String system : new String[] {LINUX, MAC, WINDOWS}) {
      kernelsAre("/data", system, Map.of("JUPYTER_DATA_DIR", "/data", "HOME", "/home/anna"));
    }
  }

  @Test
  void linux_has_it_where_data_of_users_lie() {
    kernelsAre("/home/anna/.local/share/jupyter", LINUX, Map.of("HOME", "/home/anna"));
    kernelsAre("/xdg/jupyter", LINUX, Map.of("HOME", "/home/anna", "XDG_DATA_HOME", "/xdg"));
    kernelsAre(
        "/home/anna/.local/share/jupyter",
        LINUX,
        Map.of("HOME", "/home/anna", "XDG_DATA_HOME", "", "JUPYTER_DATA_DIR", ""));
  }

  @Test
  void macos_has_it_in_the_library() {
    kernelsAre("/Users/anna/Library/Jupyter", MAC, Map.of("HOME", "/Users/anna"));
    kernelsAre(
        "/Users/anna/Library/Application Support/Jupyter",
        MAC,
        Map.of("HOME", "/Users/anna", "JUPYTER_PLATFORM_DIRS", "1"));
  }

  @Test
  void windows_has_it_among_the_data_of_applications() {
    kernelsAre("/anna/Roaming/jupyter", WINDOWS, Map.of("APPDATA", "/anna/Roaming"));
    kernelsAre(
        "/anna/Local/Jupyter",
        WINDOWS,
        Map.of("LOCALAPPDATA", "/anna/Local", "JUPYTER_PLATFORM_DIRS", "1"));
    kernelsAre(
        "/anna/AppData/Local/Jupyter",
        WINDOWS,
        Map.of("USERPROFILE", "/anna", "JUPYTER_PLATFORM_DIRS", "true"));
  }

  @Test
  void windows_without_such_a_folder_has_it_beside_the_configuration() {
    kernelsAre("/anna/.jupyter/data", WINDOWS, Map.of("USERPROFILE", "/anna"));
    kernelsAre("/conf/data", WINDOWS, Map.of("JUPYTER_CONFIG_DIR", "/conf"));
  }

  @Test
  void without_any_variable_java_knows_the_home() {
    kernelsAre(System.getProperty("user.home") + "/.local/share/jupyter", LINUX, Map.of());
    kernelsAre(
        System.getProperty("user.home") + "/Library/Jupyter",
        MAC,
        Map.of("JUPYTER_PLATFORM_DIRS", "No"));
  }
}
