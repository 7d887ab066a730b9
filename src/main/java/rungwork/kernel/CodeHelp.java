package rungwork.kernel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import jdk.jshell.SourceCodeAnalysis.Documentation;
import jdk.jshell.SourceCodeAnalysis.Suggestion;

/** Help for somebody who types a cell: completion, inspection, and whether the text is complete. */
public final class CodeHelp {
  private static final String INDENT = "    ";

  /** The packages before a type's name. */
  private static final String PACKAGES = "\\b([a-z]\\w*\\.)+(?=[A-Z])";

  private final SourceCodeAnalysis analysis;
  private final SourceDocs docs;

  /** Help with a session's names and with what the sources say about the library's. */
  CodeHelp(SourceCodeAnalysis analysis, SourceDocs docs) {
    this.analysis = analysis;
    this.docs = docs;
  }

  /**
   * Texts that may replace a part of the code.
   *
   * @param matches the texts, best first
   * @param start first character of the code that a match replaces
   * @param end the character after the last one
   */
  public record Completions(List<String> matches, int start, int end) {
    /** Copies the list. */
    public Completions {
      matches = List.copyOf(matches);
    }
  }

  /** Whether code can be run as it stands. */
  public enum Readiness {
    /** It can. */
    COMPLETE,
    /** More has to follow. */
    INCOMPLETE,
    /** Nothing that follows can make it Java. */
    INVALID
  }

  /** What can stand at the cursor, a character position in the code. */
  public Completions completions(String code, int cursor) {
    return calmly(() -> suggested(code, cursor), new Completions(List.of(), cursor, cursor));
  }

  /**
   * Names that the code itself defines before the cursor are known where the JDK can read all from
   * a statement's start to the cursor in one; so the earliest start that gives matches is taken.
   */
  private Completions suggested(String code, int cursor) {
    return statements(code, cursor).stream()
        .map(from -> suggested(code, cursor, from))
        .filter(found -> !found.matches().isEmpty())
        .findFirst()
        .orElse(new Completions(List.of(), cursor, cursor));
  }

  private Completions suggested(String code, int cursor, int from) {
    int[] anchor = new int[1];
    List<Suggestion> found =
        analysis.completionSuggestions(code.substring(from), cursor - from, anchor);
    Stream<Suggestion> fitting = found.stream().filter(Suggestion::matchesType);
    Stream<Suggestion> others = found.stream().filter(each -> !each.matchesType());
    List<String> matches =
        Stream.concat(fitting, others).map(Suggestion::continuation).distinct().toList();
    return new Completions(matches, from + anchor[0], cursor);
  }

  /** The full names of the library's public types that have this simple name. */
  List<String> types(String simpleName) {
    return docs.named(simpleName);
  }

  /** Signature, and documentation comment, of what stands at the cursor. */
  public Optional<MimeBundle> inspection(String code, int cursor) {
    return calmly(() -> documented(code, cursor), Optional.empty());
  }

  private Optional<MimeBundle> documented(String code, int cursor) {
    List<Integer> starts = statements(code, cursor);
    int from = starts.get(starts.size() - 1);
    int end = cursor;
    while (end < code.length() && Character.isJavaIdentifierPart(code.charAt(end))) {
      end++;
    }
    String name = code.substring(from, end);
    List<Documentation> found = analysis.documentation(name, name.length(), true);
    if (found.isEmpty()) {
      found = analysis.documentation(name + "(", name.length() + 1, true);
    }
    String text = found.stream().map(this::text).distinct().collect(Collectors.joining("\n\n"));
    return text.isEmpty() ? Optional.empty() : Optional.of(MimeBundle.text(text));
  }

  /** The JDK knows the comments of its own sources; those of the library travel with it. */
  private String text(Documentation found) {
    String signature = found.signature();
    String shown = signature.contains("(") ? signature.replaceAll(PACKAGES, "") : signature;
    return Optional.ofNullable(found.javadoc())
        .map(DocText::of)
        .or(() -> docs.of(signature))
        .map(
            comment ->
                shown + "\n\n" + comment.indent(4).replaceAll("(?m)^ +$", "").stripTrailing())
        .orElse(shown);
  }

  /** Whether the code can be run as it stands. */
  public Readiness readiness(String code) {
    return calmly(() -> ready(code), Readiness.INVALID);
  }

  private Readiness ready(String code) {
    String rest = code;
    while (true) {
      CompletionInfo info = analysis.analyzeCompletion(rest);
      switch (info.completeness()) {
        case DEFINITELY_INCOMPLETE:
          return Readiness.INCOMPLETE;
        case UNKNOWN:
          return Readiness.INVALID;
        case COMPLETE, COMPLETE_WITH_SEMI: // it ends here; whether it is Java, the parser says
          if (!Syntax.isJava(info.source())) {
            return Readiness.INVALID;
          }
          rest = info.remaining();
          break;
        default:
          return Readiness.COMPLETE;
      }
      if (rest.isBlank()) {
        return Readiness.COMPLETE;
      }
    }
  }

  /** What the line after incomplete code should begin with. */
  public String indent(String code) {
    String last = code.substring(code.lastIndexOf('\n') + 1);
    String same = last.substring(0, last.length() - last.stripLeading().length());
    String end = last.stripTrailing();
    return end.endsWith("{") || end.endsWith("(") ? same + INDENT : same;
  }

  /** Where the statements begin, up to the one that holds the cursor. */
  private List<Integer> statements(String code, int cursor) {
    List<Integer> starts = new ArrayList<>();
    int at = 0;
    while (true) {
      starts.add(at);
      CompletionInfo info = analysis.analyzeCompletion(code.substring(at));
      boolean whole = CellRun.WHOLE.contains(info.completeness());
      int end = whole ? code.length() - info.remaining().length() : code.length();
      if (end >= cursor || end == at) {
        return starts;
      }
      at = end;
    }
  }

  /** The JDK's analysis may fail on odd text with any Throwable; then there is simply no help. */
  private static <T> T calmly(Supplier<T> question, T otherwise) {
    try {
      return question.get();
    } catch (Throwable e) {
      return otherwise;
    }
  }
}
