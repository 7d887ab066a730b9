package rungwork.kernel;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.spi.ExecutionControl;
import jdk.jshell.spi.ExecutionControlProvider;
import jdk.jshell.spi.ExecutionEnv;

/**
 * Makes what every run of a cell shares, and warms it: the compiler has read the class path and one
 * statement has gone the whole way before the first cell comes.
 */
final class SessionStart {
  /**
   * Stands first among the imports. The shell knows them all by their first one, and a cell that
   * repeats that one would take the others away; nobody repeats this.
   */
  private static final String FIRST = "import java.lang.Object;";

  /** Leaves no name behind and does nothing. */
  private static final String WARMING = "Thread.onSpinWait();";

  private final EvaluatorSetup setup;
  private final HeapWatch watch;

  SessionStart(EvaluatorSetup setup, HeapWatch watch) {
    this.setup = setup;
    this.watch = watch;
  }

  /** A session whose cells see the class path of the class loader of this class. */
  CellRun.Session session() {
    ClassLoader library = SessionStart.class.getClassLoader();
    KeptControl control = new KeptControl(new CellLoader(library));
    JShell shell = JShell.builder().executionEngine(new Engine(control), Map.of()).build();
    shell.addToClasspath(ClassPath.joined(ClassPath.of(library)));
    bring(shell, Stream.concat(Stream.of(FIRST), setup.imports().stream()).toList());
    bring(shell, List.of(WARMING));
    CodeHelp help =
        new CodeHelp(shell.sourceCodeAnalysis(), new SourceDocs(new SourceIndex(library)));
    FullMemory memory = new FullMemory(shell, control, watch, new Reserve());
    return new CellRun.Session(shell, control, new CellPlaces(), setup, help, memory);
  }

  /** Imports as one snippet: the JDK takes them so, and compiles once instead of once for each. */
  private static void bring(JShell shell, List<String> lines) {
    for (SnippetEvent event : shell.eval(String.join("\n", lines))) {
      if (event.status() != Snippet.Status.VALID || event.exception() != null) {
        throw new IllegalArgumentException("the start-up lines do not compile: " + lines);
      }
    }
  }

  /** Hands JShell the one control. */
  private record Engine(KeptControl control) implements ExecutionControlProvider {
    @Override
    public String name() {
      return "in this process";
    }

    @Override
    public ExecutionControl generate(ExecutionEnv environment, Map<String, String> parameters) {
      return control;
    }
  }
}
