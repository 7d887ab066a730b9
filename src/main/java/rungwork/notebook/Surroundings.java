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

  private static final long LOOK_EACH_MILLISECONDS = 1000;

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

  /**
   * Does something once the client that started this process has ended without a word. Clients say
   * by {@code JPY_PARENT_PID} who they are; on Windows that is a handle, which Java cannot use. A
   * process that was started by way of another one is not watched over.
   */
  void onEndOfStarter(Runnable then) {
    String starter = environment.getOrDefault("JPY_PARENT_PID", "");
    if (starter.equals(parent())) {
      Thread watch = new Thread(() -> awaitOtherParent(starter, then), "starter");
      watch.setDaemon(true);
      watch.start();
    }
  }

  private static String parent() {
    return ProcessHandle.current().parent().map(of -> Long.toString(of.pid())).orElse("none");
  }

  /**
   * An orphan gets another parent at once, even where nobody has yet noticed the first one's end.
   */
  private static void awaitOtherParent(String starter, Runnable then) {
    try {
      while (starter.equals(parent())) {
        Thread.sleep(LOOK_EACH_MILLISECONDS);
      }
      then.run();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
