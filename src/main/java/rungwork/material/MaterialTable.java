package rungwork.material;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rungwork.csv.CsvFile;
import rungwork.csv.CsvRow;

/**
 * A table of grades as CSV; columns and units as {@code data/datapackage.json} describes them.
 *
 * @param file the file
 */
record MaterialTable(CsvFile file) {

  /** All grades in order. */
  List<Material> read() {
    List<Material> grades = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (CsvRow cells : file.rows()) {
      Material grade = new MaterialRow(file.name(), cells).material();
      if (!names.add(grade.name())) {
        throw cells.refusal("grade", grade.name() + " stands twice");
      }
      grades.add(grade);
    }
    return List.copyOf(grades);
  }
}
