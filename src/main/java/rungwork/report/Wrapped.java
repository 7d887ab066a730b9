package rungwork.report;

import java.util.ArrayList;
import java.util.List;

/** Plain text broken at blanks into lines that fit a notebook's cell. */
final class Wrapped {
  /** Letters in a line. */
  static final int WIDTH = 96;

  private Wrapped() {}

  /** Appends a text after a mark, further lines indented by the mark's width. */
  static void into(StringBuilder out, String mark, String text) {
    String start = mark;
    for (String line : lines(text, WIDTH - width(mark))) {
      out.append((start + line).stripTrailing()).append('\n');
      start = " ".repeat(width(mark));
    }
  }

  /** A text in lines of at most so many letters, as far as its words are shorter. */
  static List<String> lines(String text, int letters) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.strip().split("\\s+")) {
      if (!line.isEmpty() && width(line) + 1 + width(word) > letters) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.isEmpty() ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  /** How many letters wide a text is. */
  static int width(CharSequence text) {
    return Character.codePointCount(text, 0, text.length());
  }
}
