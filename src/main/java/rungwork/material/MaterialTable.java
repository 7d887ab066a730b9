package rungwork.material;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A table of grades as CSV; columns and units as {@code data/datapackage.json} describes them.
 *
 * @param file the file's name, for messages
 */
record MaterialTable(String file) {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  /** All grades in order. */
  List<Material> read(Reader text) throws IOException {
    List<Material> grades = new ArrayList<>();
    Set<String> names = new HashSet<>();
    try (CSVParser records = CSVParser.parse(text, FORMAT)) {
      for (CSVRecord cells : records) {
        MaterialRow row = new MaterialRow(file, records.getCurrentLineNumber(), cells);
        Material grade = row.material();
        if (!names.add(grade.name())) {
          throw row.refusal("grade", grade.name() + " stands twice");
        }
        grades.add(grade);
      }
    }
    return List.copyOf(grades);
  }
}
