package rungwork.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.opentest4j.AssertionFailedError;

class ValidationTableTest {
  private final ValidationTable table = new ValidationTable();

  private Published book(Tag tag) {
    return new Published(table, tag, "A Book, p. 1", "tube, thin", OptionalDouble.empty());
  }

  @Test
  void the_last_printed_digit_decides_the_tolerance() {
    assertEquals(0.005 / 5.41, Row.printedTolerance("5.41"), 1e-15);
    assertEquals(0.05 / 2.0, Row.printedTolerance("2.0"), 1e-15);
    assertEquals(500.0 / 376000, Row.printedTolerance("376e3"), 1e-15);
    assertEquals(0.5, Row.printedTolerance("0"), 1e-15);
  }

  @Test
  void a_value_that_rounds_to_the_printed_digits_passes() {
    book(Tag.READ).value("A", "cm²", "5.41", 5.4149).value("A", "cm²", "5.41", 5.4051);
    assertEquals(2, table.rows().size());
  }

  @Test
  void a_value_that_does_not_round_to_the_printed_digits_fails_and_is_recorded() {
    AssertionFailedError error =
        assertThrows(
            AssertionFailedError.class, () -> book(Tag.MEMORY).value("A", "cm²", "5.41", 5.41501));
    assertEquals(
        "tube, thin, A: expected 5.41 cm², computed 5.4150100, relative error 9.26e-04, tolerance"
            + " 9.24e-04; A Book, p. 1 (from memory, recomputed) ==> expected: <true> but was:"
            + " <false>",
        error.getMessage());
    assertEquals(
        ValidationTable.HEADER
            + "\n\"tube, thin\",\"A Book, p. 1\",memory,A,cm²,5.41,5.41501,0.0009261,0.0009242,"
            + "false\n",
        table.csv());
  }

  @Test
  void not_a_number_never_passes() {
    assertThrows(
        AssertionFailedError.class, () -> book(Tag.READ).value("A", "", "5.41", Double.NaN));
    assertEquals(
        "\"tube, thin\",\"A Book, p. 1\",read,A,,5.41,NaN,NaN,0.0009242,false",
        table.csv().split("\n")[1]);
  }

  @Test
  void another_tolerance_writes_its_reason_beside_the_source() {
    book(Tag.READ).allowing(0.015, "the book rounds").value("w", "mm", "-2.59", -2.627);
    assertEquals("A Book, p. 1 [tolerance 1.50 %: the book rounds]", table.rows().get(0).source());
  }

  @Test
  void rows_are_sorted_each_once_and_written_alike_in_every_locale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      book(Tag.READ).value("Z", "", "2", 2).value("A", "", "1.5", 1.5).value("Z", "", "2", 2);
      assertEquals(
          ValidationTable.HEADER
              + "\n\"tube, thin\",\"A Book, p. 1\",read,A,,1.5,1.5,0,0.03333,true\n"
              + "\"tube, thin\",\"A Book, p. 1\",read,Z,,2,2,0,0.25,true\n",
          table.csv());
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void the_page_groups_rows_by_source_and_says_what_each_passes_within() throws IOException {
    book(Tag.READ).value("A", "cm²", "5.41", 5.4149).allowing(0.015, "a|b").value("w", "", "2", 2);
    String page = new ValidationPage(ValidationGate.rows(new StringReader(table.csv()))).text();
    assertTrue(
        page.endsWith(
            "| together | 2 |\n\n## A Book, p. 1 (read in the source)\n\n"
                + "| case | quantity | printed | computed | difference | passes within |\n"
                + "| --- | --- | ---: | ---: | ---: | --- |\n"
                + "| tube, thin | A | 5.41 cm² | 5.4149 | 0.091 % | the digits |\n"
                + "| tube, thin | w | 2 | 2.0000 | under 0.0001 % | 1.50 %: a\\|b |\n"),
        page);
  }
}
