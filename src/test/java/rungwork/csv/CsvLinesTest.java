package rungwork.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.fault.ModelException;

class CsvLinesTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "=1+1",
        "=HYPERLINK(\"http://example.org\")",
        "+cmd|' /C calc'!A0",
        "-1+2",
        "@SUM(A1)",
        "|x",
        "%x",
        "＝1",
        "  =1",
        "\t=1",
        "\r\n=1",
        "\u00A0=1",
        "\u200B=1",
        "\uFEFF=1",
        "- left rail"
      })
  void words_never_become_a_formula(String words) throws IOException {
    String line = new CsvLines().words(words).end().toString();
    assertEquals("'" + words, cell("a", line));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "a=b", "80 × 40", "left rail", "'quoted'", "-50", "+12.5", "-1.5E-7"})
  void other_words_and_whole_numbers_stay_as_they_are(String words) throws IOException {
    assertEquals(words + "\r\n", new CsvLines().words(words).end().toString());
  }

  @Test
  void control_characters_and_half_letters_are_replaced() throws IOException {
    assertEquals(
        "a\uFFFDb\uFFFDc,'\uFFFD=1\r\n",
        new CsvLines().words("a\u0007b\uD800c").words("\u0000=1").end().toString());
  }

  @Test
  void commas_quotation_marks_and_ends_of_lines_are_kept_in_quotation_marks() throws IOException {
    String words = "one, \"two\"\nthree";
    String line = new CsvLines().words(words).number("-3.5").empty(2).end().toString();
    assertEquals("\"one, \"\"two\"\"\nthree\",-3.5,,\r\n", line);
    assertEquals(words, cell("a,b,c,d", line));
  }

  /** The first cell of a line, as this room reads it. */
  private static String cell(String heads, String line) throws IOException {
    byte[] bytes = (heads + "\r\n" + line).getBytes(StandardCharsets.UTF_8);
    return CsvFile.of("lines", new ByteArrayInputStream(bytes)).rows().get(0).text("a");
  }

  @Test
  void empty_cells_that_no_line_has_are_refused() {
    assertEquals(",,\r\n", new CsvLines().empty(3).end().toString());
    assertEquals(
        "-1 empty cells do not fit a line; it takes from 0 to 1000",
        assertThrows(ModelException.class, () -> new CsvLines().empty(-1)).getMessage());
    assertEquals(
        "1001 empty cells do not fit a line; it takes from 0 to 1000",
        assertThrows(ModelException.class, () -> new CsvLines().empty(1001)).getMessage());
    assertEquals(1000 - 1 + 2, new CsvLines().empty(1000).end().toString().length());
  }
}
