package rungwork.kernel;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.util.JavacTask;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.util.List;
import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/** Asks the JDK's parser whether text obeys Java's grammar; what its names mean is not asked. */
final class Syntax {
  /** Where the text of a cell's statement may stand. */
  private static final List<String> PLACES =
      List.of("class A {{ %s\n }}", "class A { %s\n }", "%s", "class A { Object a = %s\n ; }");

  private Syntax() {}

  /** Whether the text is a statement, member, import or expression as far as grammar goes. */
  static boolean isJava(String statement) {
    return PLACES.stream().anyMatch(place -> parses(place.replace("%s", statement)));
  }

  private static boolean parses(String source) {
    return parsed(source).isJava();
  }

  /**
   * A text that the parser read.
   *
   * @param task what read it, from which its comments can be had
   * @param unit what was read
   * @param isJava whether it obeys the grammar
   */
  record Parsed(JavacTask task, CompilationUnitTree unit, boolean isJava) {}

  static Parsed parsed(String source) {
    DiagnosticCollector<JavaFileObject> found = new DiagnosticCollector<>();
    JavacTask task =
        (JavacTask)
            ToolProvider.getSystemJavaCompiler()
                .getTask(
                    null, null, found, List.of("-proc:none"), null, List.of(new InMemory(source)));
    try {
      CompilationUnitTree unit = task.parse().iterator().next();
      return new Parsed(
          task,
          unit,
          found.getDiagnostics().stream()
              .noneMatch(each -> each.getKind() == Diagnostic.Kind.ERROR));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A source file that is nowhere on disk. */
  private static final class InMemory extends SimpleJavaFileObject {
    private final String text;

    private InMemory(String text) {
      super(URI.create("string:///A.java"), Kind.SOURCE);
      this.text = text;
    }

    @Override
    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
      return text;
    }
  }
}
