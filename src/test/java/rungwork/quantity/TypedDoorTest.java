package rungwork.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.net.URI;
import java.util.List;
import java.util.Locale;
import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileManager;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/** What must not compile is shown by compiling it. */
class TypedDoorTest {
  private static final List<String> SOURCE =
      List.of(
          "import static rungwork.quantity.Quantities.*;",
          "import javax.measure.Quantity;",
          "import javax.measure.quantity.*;",
          "import rungwork.quantity.LineLoad;",
          "class Door {",
          "  static void rate(Quantity<Pressure> yield) {}",
          "  static void f() { rate(MPa(235)); rate(stress(\"235 MPa\")); }",
          "  static void a() { rate(mm(235)); }",
          "  static void b() { rate(length(\"235 mm\")); }",
          "  static void c() { rate(kN(235)); }",
          "  static void d() { rate(kNm(235)); }",
          "  static void e() { rate(235.0); }",
          "  static Quantity<Energy> momentIsNoEnergy() { return Nm(20); }",
          "  static Quantity<LineLoad> stiffnessIsNoLineLoad() { return Npmm(20); }",
          "}");

  @Test
  void a_length_where_a_stress_belongs_does_not_compile() {
    assertEquals(
        List.of(
            "line 8 compiler.err.prob.found.req",
            "line 9 compiler.err.prob.found.req",
            "line 10 compiler.err.prob.found.req",
            "line 11 compiler.err.prob.found.req",
            "line 12 compiler.err.prob.found.req",
            "line 13 compiler.err.prob.found.req",
            "line 14 compiler.err.prob.found.req"),
        errors());
  }

  private static List<String> errors() {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    DiagnosticCollector<JavaFileObject> found = new DiagnosticCollector<>();
    JavaFileManager files = compiler.getStandardFileManager(found, Locale.ROOT, null);
    List<String> options =
        List.of("-proc:none", "-classpath", System.getProperty("java.class.path"));
    compiler.getTask(null, files, found, options, null, List.of(file())).call();
    return found.getDiagnostics().stream()
        .filter(diagnostic -> diagnostic.getKind() == Diagnostic.Kind.ERROR)
        .map(error -> "line " + error.getLineNumber() + " " + error.getCode())
        .toList();
  }

  private static JavaFileObject file() {
    return new SimpleJavaFileObject(URI.create("string:///Door.java"), JavaFileObject.Kind.SOURCE) {
      @Override
      public CharSequence getCharContent(boolean ignoreEncodingErrors) {
        return String.join("\n", SOURCE);
      }
    };
  }
}
