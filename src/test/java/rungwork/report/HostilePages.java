package rungwork.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.xml.sax.InputSource;
import rungwork.quantity.Units;

/** Names that break out, run backwards, break lines or never end, and pages that must hold them. */
final class HostilePages {
  private static final Pattern DRAWING = Pattern.compile("<svg.*?</svg>", Pattern.DOTALL);

  private HostilePages() {}

  static List<String> names() {
    return List.of(
        Examples.NASTY,
        "\"><img src=x onerror=alert(1)>",
        "</title></svg></style><script>alert(1)</script>",
        "]]>--><!-- {} %s ${x}",
        "first\nsecond\r\nthird",
        "\u202egnp.exe \u200f\u200b",
        "\uD83D\uDE97\uD83D",
        "\u0000\u0001\u001b[31m",
        "x".repeat(10_000));
  }

  /**
   * Asserts that a value's page holds no tag of a name, no sign to steer by, and sound drawings.
   */
  static void assertText(Object value) throws Exception {
    String html = new Page(Presentation.blocks(value, Units.METRIC)).html();
    String what = value.getClass().getSimpleName();
    String plain = html.toLowerCase(Locale.ROOT);
    assertFalse(plain.contains("<script"), what);
    assertFalse(plain.contains("<img"), what);
    assertTrue(html.chars().noneMatch(c -> c < ' ' && "\n\r\t".indexOf(c) < 0), what);
    DocumentBuilder parser = DocumentBuilderFactory.newInstance().newDocumentBuilder();
    parser.setErrorHandler(null);
    Matcher drawings = DRAWING.matcher(html);
    while (drawings.find()) {
      InputSource drawing = new InputSource(new StringReader(drawings.group()));
      assertEquals("svg", parser.parse(drawing).getDocumentElement().getTagName(), what);
    }
  }
}
