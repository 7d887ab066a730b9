package rungwork.kernel;

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

  private static String style(String before, String codes) {
    String style = before;
    for (String code : codes.split("[;:]", -1)) {
      int value = code.matches("\\d{1,3}") ? Integer.parseInt(code) : 0;
      if (value == 0) {
        style = "";
      } else if (value == 1) {
        style += " ansi-bold";
      } else if (value >= 30 && value <= 37) {
        style += " ansi-" + COLOURS.get(value - 30);
      } else if (value >= 90 && value <= 97) {
        style += " ansi-" + COLOURS.get(value - 90);
      }
    }
    return style;
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
