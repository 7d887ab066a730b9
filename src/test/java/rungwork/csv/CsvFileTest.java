package rungwork.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwork.fault.ModelException;

class CsvFileTest {
  @TempDir Path folder;

  @Test
  void cells_are_found_by_the_name_of_their_column() {
    CsvRow row = read("size , wall_mm,note\n \"2\"\"x2\"\"\" , 3.2 ,\"one, two\"\n").rows().get(0);
    assertEquals("2\"x2\"", row.text("size"));
    assertEquals(3.2, row.number("wall_mm"));
    assertEquals("one, two", row.text("note"));
    assertEquals("", row.text("price"));
  }

  @ParameterizedTest
  @CsvSource({"12, 12", "-.5, -0.5", "+3., 3", "1.5e-3, 0.0015", "2E2, 200"})
  void plain_decimals_are_numbers(String written, double value) {
    assertEquals(value, read("a,b\nx," + written + "\n").rows().get(0).number("b"));
  }

  @ParameterizedTest
  @CsvSource({"1f", "1d", "0x1p3", "NaN", "Infinity", "3 mm", "1e999", "1_000", "٣", "1/8"})
  void nothing_else_is_a_number(String written) {
    CsvRow row = read("a,b\nx," + written + "\n").rows().get(0);
    refused("shop.csv line 2, b: \"" + written + "\" is not a number", () -> row.number("b"));
  }

  @Test
  void a_comma_in_a_number_is_refused_with_what_would_do() {
    CsvRow row = read("a,b\nx,\"3,2\"\n").rows().get(0);
    refused(
        "shop.csv line 2, b: \"3,2\" is not a number; write the decimal sign as a point",
        () -> row.number("b"));
  }

  @Test
  void a_mark_of_byte_order_and_the_ends_of_lines_do_not_matter() {
    for (String end : List.of("\n", "\r\n", "\r")) {
      CsvFile file = read("\uFEFFa,b" + end + "1,2" + end + "3,x");
      assertEquals(List.of("a", "b"), file.columns());
      assertEquals(1, file.rows().get(0).number("a"));
      refused("shop.csv line 3, b: \"x\" is not a number", () -> file.rows().get(1).number("b"));
    }
  }

  @Test
  void rows_and_columns_without_anything_are_passed_over_and_counted() {
    CsvFile file = read("a,b,,\n\n1,2,,\n,,,\n \n3,x,,\n,,,\n");
    assertEquals(2, file.rows().size());
    assertEquals(List.of("a", "b"), file.named());
    refused("shop.csv line 6, b: \"x\" is not a number", () -> file.rows().get(1).number("b"));
  }

  @Test
  void a_row_is_named_by_the_line_that_it_begins_on() {
    CsvFile file = read("a,note\n1,\"two\nlines\"\nx,\n");
    refused("shop.csv line 4, a: \"x\" is not a number", () -> file.rows().get(1).number("a"));
    refused(
        "shop.csv line 4, note: nothing stands there", () -> file.rows().get(1).required("note"));
  }

  @Test
  void ragged_rows_are_refused() {
    refused("shop.csv line 3, c: the row has no such column", "a,b,c\n1,2,3\n1,2\n");
    refused("shop.csv line 2, column 4: \"4\" stands under no name", "a,b,c\n1,2,3,4\n");
    refused(
        "shop.csv line 1, column 2: has no name, yet something stands below it", "a,,c\n1,2,3\n");
  }

  @Test
  void a_column_stands_once() {
    refused("shop.csv line 1, a: stands twice", "a,b,a\n1,2,3\n");
    refused(
        "shop.csv line 2, price: there is no such column",
        () -> read("a\n1\n").rows().get(0).number("price"));
  }

  @Test
  void other_marks_than_commas_are_refused() {
    refused(
        "shop.csv line 1, column 1: semicolons part the columns; save the file with commas",
        "a;b\n1;2\n");
    refused(
        "shop.csv line 1, column 1: tabs part the columns; save the file with commas",
        "a\tb\n1\t2\n");
  }

  @Test
  void quotation_marks_that_do_not_match_are_refused_where_they_begin() {
    String reason =
        ": the quotation marks do not match; a cell stands in a pair of them, one inside it is"
            + " doubled";
    refused("shop.csv line 3, b" + reason, "a,b,c\n\"1\",2,3\n\"1\",\"2,3\n4,5,6\n");
    refused("shop.csv line 2, a" + reason, "a,b,c\n\"2\"x2,2,3\n");
    refused("shop.csv line 1, column 2" + reason, "a,\"b,c\n1,2,3\n");
  }

  @Test
  void another_encoding_is_refused_where_it_shows() {
    Charset western = StandardCharsets.ISO_8859_1;
    refused(
        "shop.csv line 3, note: a letter there is not in UTF-8; save the file as CSV in UTF-8",
        () -> of("a,note,b\n1,x,2\n1,60×40,3\n".getBytes(western)));
    refused(
        "shop.csv line 1, column 2: a letter there is not in UTF-8; save the file as CSV in UTF-8",
        () -> of("a,°C\n1,2\n".getBytes(western)));
    refused(
        "shop.csv line 1, column 1: a letter there is not in UTF-8; save the file as CSV in UTF-8",
        () -> of("a,b\n1,2\n".getBytes(StandardCharsets.UTF_16)));
    refused(
        "shop.csv line 1, column 1: what stands there is no text; save the file as CSV in UTF-8",
        () -> of("a,b\n1,2\n".getBytes(StandardCharsets.UTF_16LE)));
  }

  @Test
  void a_text_cut_within_a_letter_is_refused() {
    byte[] whole = "a,b\n1,é".getBytes(StandardCharsets.UTF_8);
    refused(
        "shop.csv line 2, b: a letter there is not in UTF-8; save the file as CSV in UTF-8",
        () -> of(java.util.Arrays.copyOf(whole, whole.length - 1)));
  }

  @Test
  void an_empty_file_is_refused() {
    String reason =
        "shop.csv line 1, column 1: nothing stands there; the first line names the columns";
    refused(reason, "");
    refused(reason, "\uFEFF");
    refused(reason, ",,\n1,2,3\n");
    refused(reason, "\na,b\n1,2\n");
  }

  @Test
  void a_file_that_a_person_brings_has_a_row() throws IOException {
    Path file = folder.resolve("shop.csv");
    Files.writeString(file, "a,b\n");
    refused(
        "shop.csv line 2, a: nothing stands there; give one row at least",
        () -> CsvFile.read("list of prices", file));
    Files.writeString(file, "a,b\n1,2\n");
    assertEquals(1, CsvFile.read("list of prices", file).rows().size());
  }

  @Test
  void what_is_no_file_is_refused_with_its_whole_path() throws IOException {
    Path none = folder.resolve("none.csv");
    refused("there is no list of prices " + none, () -> CsvFile.read("list of prices", none));
    refused(
        "there is no list of prices " + Path.of("none.csv").toAbsolutePath(),
        () -> CsvFile.read("list of prices", Path.of("none.csv")));
    refused(
        "list of prices " + folder + " is not a file",
        () -> CsvFile.read("list of prices", folder));
    Path vast = folder.resolve("vast.csv");
    try (RandomAccessFile file = new RandomAccessFile(vast.toFile(), "rw")) {
      file.setLength(100_000_001);
    }
    refused(
        "list of prices " + vast + " is larger than 100 MB",
        () -> CsvFile.read("list of prices", vast));
  }

  private static CsvFile read(String text) {
    return of(text.getBytes(StandardCharsets.UTF_8));
  }

  private static CsvFile of(byte[] text) {
    try {
      return CsvFile.of("shop.csv", new ByteArrayInputStream(text));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static void refused(String message, String text) {
    refused(message, () -> read(text));
  }

  private static void refused(String message, org.junit.jupiter.api.function.Executable act) {
    assertEquals(message, assertThrows(ModelException.class, act).getMessage());
  }

  @Test
  void a_file_of_no_kind_is_refused() {
    assertEquals(
        "a kind of file has no name; give it one",
        assertThrows(ModelException.class, () -> CsvFile.read(" ", Path.of("rack.csv")))
            .getMessage());
  }
}
