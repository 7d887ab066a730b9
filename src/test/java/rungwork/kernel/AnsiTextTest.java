package rungwork.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Terminal text on a page. */
class AnsiTextTest {
  private static String after(String codes) {
    return AnsiText.html("\u001b[" + codes + "mx");
  }

  @ParameterizedTest
  @CsvSource({
    "31, ansi-red",
    "94, ansi-blue",
    "1;32, ansi-bold ansi-green",
    "31;34, ansi-blue",
    "31;1;36, ansi-bold ansi-cyan",
    "1;31;22, ansi-red",
    "38;5;3, ansi-yellow",
    "38;5;12, ansi-blue",
    "48;5;1;35, ansi-magenta",
    "38;2;1;31;32;1, ansi-bold",
  })
  void colours_become_classes(String codes, String classes) {
    assertEquals("<span class=\"" + classes + "\">x</span>", after(codes));
  }

  @ParameterizedTest
  @CsvSource({
    "31;0",
    "''",
    "31;39",
    "38;5;200",
    "38;5",
    "38",
    "48;2;1;1;1",
    "38;2;31",
    "4;7",
    "999"
  })
  void what_ends_a_colour_or_has_no_class_leaves_plain_text(String codes) {
    assertEquals("x", after(codes));
  }

  @Test
  void other_control_sequences_are_left_out_and_markup_is_escaped() {
    assertEquals("a&lt;b&gt;&amp;", AnsiText.html("a\u001b[2K\u001b[3;4H<b>&"));
    assertEquals("\uFFFD]0;t\uFFFD", AnsiText.html("\u001b]0;t\u0007"));
  }
}
