package rungwork.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.fault.ModelException;
import rungwork.quantity.Units;
import rungwork.record.DesignRecord;
import rungwork.report.RecordDocument;

class SavedRecordTest {
  private static final RecordDocument DOCUMENT =
      new RecordDocument(
          DesignRecord.of("New front end"), Units.METRIC, Version.ofProgramAndData());

  @TempDir Path folder;

  @Test
  void a_record_is_saved_as_page_table_and_text_and_says_where() throws IOException {
    Path fresh = folder.resolve("not yet there");
    String said = new SavedRecord(DOCUMENT, "my-frame").write(fresh);
    List<Path> files =
        List.of(
            fresh.resolve("my-frame.html"),
            fresh.resolve("my-frame-checks.csv"),
            fresh.resolve("my-frame.txt"));
    assertEquals(
        "saved beside this notebook: my-frame.html, my-frame-checks.csv, my-frame.txt", said);
    assertEquals(DOCUMENT.file(), Files.readString(files.get(0)));
    assertEquals(DOCUMENT.csv(), Files.readString(files.get(1)));
    assertEquals(DOCUMENT.text(), Files.readString(files.get(2)));
    try (var all = Files.list(fresh)) {
      assertEquals(3, all.count());
    }
  }

  @Test
  void a_later_save_replaces_the_files() throws IOException {
    Files.writeString(folder.resolve("frame.txt"), "old");
    new SavedRecord(DOCUMENT, "frame").write(folder);
    assertEquals(DOCUMENT.text(), Files.readString(folder.resolve("frame.txt")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", " ", "../up", "a/b", "a\\b", "C:frame", ".hidden", "a\nb", "frame.", "-x"})
  void a_name_that_is_no_plain_file_name_is_refused(String name) {
    ModelException refusal =
        assertThrows(ModelException.class, () -> new SavedRecord(DOCUMENT, name));
    assertEquals(
        "a record cannot be saved as \""
            + name
            + "\"; use letters, digits, blanks, dots and hyphens, 100 at most, as in my-frame",
        refusal.getMessage());
  }

  @Test
  void a_name_too_long_for_a_file_is_refused_and_shortened_in_the_message() {
    ModelException refusal =
        assertThrows(ModelException.class, () -> new SavedRecord(DOCUMENT, "x".repeat(10_000)));
    assertEquals(
        "a record cannot be saved as \""
            + "x".repeat(100)
            + "…\"; use letters, digits, blanks, dots and hyphens, 100 at most, as in my-frame",
        refusal.getMessage());
  }

  @Test
  void a_folder_that_cannot_be_written_to_is_told() throws IOException {
    Path file = Files.writeString(folder.resolve("in the way"), "a file");
    ModelException refusal =
        assertThrows(ModelException.class, () -> new SavedRecord(DOCUMENT, "frame").write(file));
    assertEquals(
        "the record could not be written to "
            + file.resolve("frame.html").toAbsolutePath()
            + " (FileAlreadyExistsException); is the folder there, may it be written to, is there"
            + " room?",
        refusal.getMessage());
  }

  @Test
  void program_and_data_are_named_by_their_versions() {
    String made = Version.ofProgramAndData();
    assertTrue(
        made.matches("Rungwork \\S+, tables of materials and sizes \\d+\\.\\d+\\.\\d+"), made);
  }
}
