import com.google.gson.JsonElement;
import com.google.gson.JsonParser;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;

/**
 * Runs the code of notebooks as another Java kernel does: the JDK's shell in this process, the
 * library given to it as a class path and nothing else known of it. The last value of a cell shows
 * as its text, a semicolon behind it or not.
 */
class PlainShell {
  public static void main(String[] args) throws Exception {
    for (String notebook : List.of(args).subList(1, args.length)) {
      try (JShell shell = JShell.builder().executionEngine("local").out(System.out).build()) {
        for (String entry : args[0].split(java.io.File.pathSeparator)) {
          shell.addToClasspath(entry);
        }
        run(shell, Path.of(notebook));
      }
    }
  }

  private static void run(JShell shell, Path notebook) throws Exception {
    var cells = JsonParser.parseString(Files.readString(notebook)).getAsJsonObject();
    for (JsonElement cell : cells.getAsJsonArray("cells")) {
      if (cell.getAsJsonObject().get("cell_type").getAsString().equals("code")) {
        StringBuilder code = new StringBuilder();
        cell.getAsJsonObject().getAsJsonArray("source").forEach(l -> code.append(l.getAsString()));
        run(shell, code.toString());
      }
    }
    System.out.println("ran " + notebook.getFileName());
  }

  private static void run(JShell shell, String code) {
    Optional<SnippetEvent> last = Optional.empty();
    String rest = code;
    while (!rest.isBlank()) {
      var part = shell.sourceCodeAnalysis().analyzeCompletion(rest);
      for (SnippetEvent event : shell.eval(part.source() == null ? rest : part.source())) {
        boolean refused = event.status() == Snippet.Status.REJECTED;
        if (refused || event.exception() != null) {
          System.out.println(event.snippet().source());
          shell.diagnostics(event.snippet()).forEach(d -> System.out.println(d.getMessage(null)));
          if (event.exception() != null) {
            event.exception().printStackTrace(System.out);
          }
          System.exit(1);
        }
        last = Optional.of(event);
      }
      rest = part.remaining();
    }
    last.filter(event -> event.snippet().kind() == Snippet.Kind.EXPRESSION)
        .ifPresent(event -> System.out.println("shows " + event.value()));
  }
}
