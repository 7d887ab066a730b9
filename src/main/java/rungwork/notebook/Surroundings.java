package rungwork.notebook;

import java.io.File;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * What a command finds around it.
 *
 * @param path the folders in which the machine looks for programs
 * @param live is given the line that says how far a run has come, each in place of the one before;
 *     the empty line when the run is over
 */
record Surroundings(String path, Consumer<String> live) {
  /** Jupyter's own launcher, or one of its faces that come without it. */
  private static final List<String> LAUNCHERS =
      List.of("jupyter", "jupyter-lab", "jupyter-notebook", "jupyter.exe");

  /** Goes to the line's beginning and clears it (ECMA-48, 5th edition 1991, 8.3.41, EL). */
  private static final String AFRESH = "\r\u001b[K";

  /** This process; a line that changes is only for somebody who watches a terminal. */
  static Surroundings ofProcess(PrintStream out) {
    String path = System.getenv().getOrDefault("PATH", "");
    return System.console() == null
        ? new Surroundings(path, line -> {})
        : new Surroundings(path, line -> rewrite(out, line));
  }

  private static void rewrite(PrintStream out, String line) {
    out.print(AFRESH + line);
    out.flush();
  }

  /** Whether the machine has Jupyter. */
  boolean haveJupyter() {
    return Stream.of(path.split(File.pathSeparator))
        .filter(folder -> !folder.isEmpty())
        .flatMap(folder -> LAUNCHERS.stream().map(name -> Path.of(folder, name)))
        .anyMatch(Files::isExecutable);
  }
}
