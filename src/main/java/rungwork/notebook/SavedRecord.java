package rungwork.notebook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import rungwork.fault.ModelException;
import rungwork.report.RecordDocument;

/**
 * A record's files.
 *
 * @param document what they hold
 * @param name their name without an ending
 */
record SavedRecord(RecordDocument document, String name) {
  private static final int LONGEST = 100;

  /** Refuses a name that is no plain file name on every machine. */
  SavedRecord {
    if (name.length() > LONGEST
        || !name.matches("[\\p{L}\\p{N}][\\p{L}\\p{N} ._-]*")
        || name.endsWith(".")) {
      throw new ModelException(
          "a record cannot be saved as \""
              + (name.length() > LONGEST ? name.substring(0, LONGEST) + "…" : name)
              + "\"; use letters, digits, blanks, dots and hyphens, "
              + LONGEST
              + " at most, as in my-frame");
    }
  }

  /**
   * Writes the files into a folder, over older ones of the same name.
   *
   * @return what was written, named as a reader of the notebook finds it
   */
  String write(Path folder) {
    Map<String, String> files = contents();
    files.forEach((ending, text) -> write(folder.resolve(name + ending), text));
    return "saved beside this notebook: "
        + String.join(", ", files.keySet().stream().map(ending -> name + ending).toList());
  }

  private Map<String, String> contents() {
    Map<String, String> files = new LinkedHashMap<>();
    files.put(".html", document.file());
    files.put("-checks.csv", document.csv());
    files.put(".txt", document.text());
    return files;
  }

  private static void write(Path file, String text) {
    Path whole = file.toAbsolutePath().normalize();
    try {
      Files.createDirectories(whole.getParent());
      Files.writeString(whole, text, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new ModelException(
          "the record could not be written to "
              + whole
              + " ("
              + e.getClass().getSimpleName()
              + "); is the folder there, may it be written to, is there room?");
    }
  }
}
