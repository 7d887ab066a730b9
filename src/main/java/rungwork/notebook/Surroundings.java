package rungwork.notebook;

import java.io.File;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import rungwork.kernel.KernelSpec;

/**
 * What a command finds around it.
 *
 * @param environment variables of the process
 * @param system the operating system's name as Java has it
 * @param live is given the line that says how far a run has come, each in place of the one before;
 *     the empty line when the run is over
 */
record Surroundings(Map<String, String> environment, String system, Consumer<String> live) {
  /** Jupyter's own launcher, or one of its faces that come without it. */
  private static final List<String> LAUNCHERS =
      List.of("jupyter", "jupyter-lab", "jupyter-notebook", "jupyter.exe");

  /** Goes to the line's beginning and clears it (ECMA-48, 5th edition 1991, 8.3.41, EL). */
  private static final String AFRESH = "\r\u001b[K";

  /** This process; a line that changes is only for somebody who watches a terminal. */
  static Surroundings ofProcess(PrintStream out) {
    Consumer<String> live = System.console() == null ? line -> {} : line -> rewrite(out, line);
    return new Surroundings(System.getenv(), System.getProperty("os.name"), live);
  }

  private static void rewrite(PrintStream out, String line) {
    out.print(AFRESH + line);
    out.flush();
  }

  /** Whether the machine has Jupyter. */
  boolean haveJupyter() {
    return environment.entrySet().stream()
        .filter(variable -> variable.getKey().equalsIgnoreCase("PATH")) // "Path" on Windows
        .flatMap(variable -> Stream.of(variable.getValue().split(File.pathSeparator)))
        .filter(folder -> !folder.isEmpty())
        .flatMap(folder -> LAUNCHERS.stream().map(name -> Path.of(folder, name)))
        .anyMatch(Files::isExecutable);
  }

  /** Where Jupyter looks for kernels of this user alone. */
  Path userKernels() {
    return KernelSpec.userFolder(environment, system);
  }
}
