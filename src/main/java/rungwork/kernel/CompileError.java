package rungwork.kernel;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import jdk.jshell.Diag;

/**
 * Why a snippet does not compile.
 *
 * @param message what the compiler says, over one or more lines
 * @param start first character of the place in the snippet
 * @param end the character after the last one
 */
record CompileError(String message, int start, int end) {
  static CompileError of(Diag diagnostic) {
    return new CompileError(
        diagnostic.getMessage(Locale.ENGLISH),
        Math.toIntExact(Math.max(0, diagnostic.getStartPosition())),
        Math.toIntExact(Math.max(0, diagnostic.getEndPosition())));
  }

  /**
   * A name, as in "variable width" or "method area(int)", that a definition uses and nobody gave.
   */
  static CompileError unresolved(String dependency, String source) {
    String name = dependency.replaceAll("^.* |\\(.*", "");
    Matcher use = Pattern.compile("\\b" + Pattern.quote(name) + "\\b").matcher(source);
    int start = use.find() ? use.start() : 0;
    return new CompileError("cannot find " + dependency, start, start + name.length());
  }

  /** This error with a question after the message's first line. */
  CompileError didYouMean(String name) {
    return advised("did you mean " + name + "?");
  }

  /** This error with advice after the message's first line. */
  CompileError advised(String advice) {
    String first = summary() + "; " + advice;
    return new CompileError(first + message.substring(summary().length()), start, end);
  }

  /** The first line of the message. */
  String summary() {
    return message.lines().findFirst().orElse("");
  }

  /** The message with the cell's line and carets under the place. */
  List<String> pointed(CellPlaces.Place place) {
    int line = place.lineAt(start);
    String text = place.text(line);
    int at = Math.min(place.offset() + start, place.cell().source().length());
    int column = at - (place.cell().source().lastIndexOf('\n', at - 1) + 1);
    int carets = Math.max(1, Math.min(end - start, text.length() - column));
    List<String> lines = new ArrayList<>();
    lines.add("cell [" + place.cell().count() + "], line " + line + ": " + summary());
    lines.add("    " + text);
    lines.add("    " + text.substring(0, column).replaceAll("[^\t]", " ") + "^".repeat(carets));
    message
        .lines()
        .skip(1)
        .filter(more -> !more.matches("\\s*location: class\\s*"))
        .forEach(lines::add);
    return lines;
  }
}
