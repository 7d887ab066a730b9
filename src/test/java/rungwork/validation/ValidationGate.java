package rungwork.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * What must hold of all rows together. The build runs this after every other test, on the file that
 * they left; the name keeps it out of the ordinary run.
 */
class ValidationGate {
  private static final Path PAGE = Path.of("docs", "validation.md");
  private static final int FEWEST = 40;

  private static List<CSVRecord> rows;

  @BeforeAll
  static void read_the_file_of_the_full_run() throws IOException {
    try (Reader text = Files.newBufferedReader(ValidationTable.FILE)) {
      rows = rows(text);
    }
  }

  /** The rows of a file with a head. */
  static List<CSVRecord> rows(Reader text) throws IOException {
    CSVFormat withHead = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(text, withHead)) {
      return parser.getRecords();
    }
  }

  @Test
  void the_file_has_the_agreed_head() throws IOException {
    assertEquals(ValidationTable.HEADER, Files.readAllLines(ValidationTable.FILE).get(0));
  }

  @Test
  void every_row_passes() {
    List<CSVRecord> failed =
        rows.stream().filter(row -> !row.get("passes").equals("true")).toList();
    assertEquals(List.of(), failed);
  }

  @Test
  void at_least_forty_values_are_published_ones() {
    ValidationPage page = new ValidationPage(rows);
    long published = page.count(Tag.READ) + page.count(Tag.MEMORY);
    assertTrue(published >= FEWEST, () -> published + " published values; want " + FEWEST);
  }

  @Test
  void at_least_half_of_all_values_were_read_in_their_source() {
    long read = new ValidationPage(rows).count(Tag.READ);
    assertTrue(2 * read >= rows.size(), () -> read + " of " + rows.size() + " were read in source");
  }

  @Test
  void the_page_lists_the_same_rows() throws IOException {
    String made = new ValidationPage(rows).text();
    if (Boolean.getBoolean("validation.write")) {
      Files.createDirectories(PAGE.getParent());
      Files.writeString(PAGE, made);
    }
    assertEquals(
        made,
        Files.readString(PAGE),
        "docs/validation.md is not what the tests found; mvn verify -Dvalidation.write=true writes"
            + " it anew");
  }
}
