package rungwork.kernel;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Text for a terminal as HTML: escaped, colours as classes, other control sequences left out.
 *
 * <p>Source of the codes: ECMA-48, 5th edition 1991, 8.3.117 (SGR) and 5.4.
 */
final class AnsiText {
  private static final Pattern SEQUENCE = Pattern.compile("\u001b\\[([0-9;:?]*)[ -/]*([@-~])");
  private static final List<String> COLOURS =
      List.of("black", "red", "green", "yellow", "blue", "magenta", "cyan", "white");

  /** These two are followed by a colour's kind and its own numbers (ISO 8613-6, from memory). */
  private static final int FOREGROUND = 38;

  private static final int BACKGROUND = 48;
  private static final int INDEXED = 5;
  private static final int RED_GREEN_BLUE = 2;

  private AnsiText() {}

  static String html(String text) {
    StringBuilder html = new StringBuilder();
    Matcher sequence = SEQUENCE.matcher(text);
    String style = "";
    int at = 0;
    while (sequence.find()) {
      append(html, style, text.substring(at, sequence.start()));
      style = sequence.group(2).equals("m") ? style(style, sequence.group(1)) : style;
      at = sequence.end();
    }
    append(html, style, text.substring(at));
    return html.toString();
  }

  private static void append(StringBuilder html, String style, String text) {
    if (style.isBlank() || text.isEmpty()) {
      html.append(escape(text));
    } else {
      html.append("<span class=\"" + style.strip() + "\">" + escape(text) + "</span>");
    }
  }

  /** The classes that hold after the codes; a later colour takes the place of an earlier one. */
  private static String style(String before, String codes) {
    String style = before;
    Deque<Integer> left = numbers(codes);
    while (!left.isEmpty()) {
      int code = left.remove();
      if (code == FOREGROUND || code == BACKGROUND) {
        style = code == FOREGROUND ? coloured(style, chosen(left)) : skipped(style, left);
      } else if (code == 0) {
        style = "";
      } else if (code == 1 || code == 22) {
        style = style.replace(" ansi-bold", "") + (code == 1 ? " ansi-bold" : "");
      } else if (code >= 30 && code <= 37 || code >= 90 && code <= 97) {
        style = coloured(style, COLOURS.get(code % 10));
      } else if (code == 39) {
        style = coloured(style, "");
      }
    }
    return style;
  }

  private static Deque<Integer> numbers(String codes) {
    Deque<Integer> numbers = new ArrayDeque<>();
    for (String code : codes.split("[;:]", -1)) {
      numbers.add(code.matches("\\d{1,3}") ? Integer.parseInt(code) : 0);
    }
    return numbers;
  }

  private static String skipped(String style, Deque<Integer> left) {
    chosen(left);
    return style;
  }

  /** Takes a colour's own numbers off the list; one that has no class here has no name. */
  private static String chosen(Deque<Integer> left) {
    int kind = left.isEmpty() ? 0 : left.remove();
    int index = left.isEmpty() || kind != INDEXED ? COLOURS.size() * 2 : left.remove();
    for (int i = 0; kind == RED_GREEN_BLUE && i < 3 && !left.isEmpty(); i++) {
      left.remove();
    }
    return index < COLOURS.size() * 2 ? COLOURS.get(index % COLOURS.size()) : "";
  }

  private static String coloured(String style, String name) {
    String others = style.replaceAll(" ansi-(?!bold)[a-z]+", "");
    return name.isEmpty() ? others : others + " ansi-" + name;
  }

  /** Text in which nothing is markup and no control character is left. */
  static String escape(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;")
        .replaceAll("[\\x00-\\x08\\x0B\\x0C\\x0E-\\x1F\\x7F-\\x9F\\uFFFE\\uFFFF]", "\uFFFD");
  }
}
